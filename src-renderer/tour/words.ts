export const tourWords = {
  name: 'A short tour',
  of: (at: number, all: number) => `${at} of ${all}`,
  next: 'Next',
  back: 'Back',
  done: 'Done',
  skip: 'Skip the tour',
} as const
