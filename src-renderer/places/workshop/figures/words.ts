import type { Coefficient } from '@shared/physics/coefficients'

export const figureWords = {
  explain:
    'Every verdict is reckoned three times: with the cautious, the likely and the hopeful value of each of these. Change one where you know better; the Bench follows at once.',
  find: 'Find a figure',
  resetAll: 'Put all back',
  reset: 'Put back',
  resetLabel: (name: string) => `Put ${name} back as shipped`,
  wasReset: (name: string) => `${name} is as shipped again.`,
  allReset: 'All figures are as shipped again.',
  name: 'Figure',
  low: 'Low',
  mid: 'Likely',
  high: 'High',
  range: 'May be',
  source: 'Source',
  cautious: (end: 'low' | 'high') => (end === 'low' ? 'low is cautious' : 'high is cautious'),
  fieldLabel: (name: string, end: string) => `${name}, ${end.toLowerCase()}`,
  own: 'yours',
  none: 'No figure by that name.',
  groups: {
    grip: 'Grip of the bottom',
    potDrag: 'Drag of the pot',
    rope: 'Rope and float',
    hauling: 'Hauling',
  },
  standing: {
    read: 'Read in the source',
    memory: 'Recalled from the source',
    derived: 'Worked out',
    judgement: 'Judgement',
  } satisfies Record<Coefficient['standing'], string>,
  fishingElsewhere: 'Figures of wear stand under Season; they are kept together with these.',
} as const
