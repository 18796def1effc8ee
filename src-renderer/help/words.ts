export const helpWords = { about: (name: string) => `About ${name.toLowerCase()}` } as const
