export const papers = ['a4', 'letter'] as const
export type Paper = (typeof papers)[number]

// Where the shops sell Letter and not A4.
const letterPlaces = new Set(['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'VE', 'CR', 'GT', 'PA', 'DO', 'SV', 'NI'])

/** The paper that a reader of this language and place is likely to have. */
export function usualPaper(languages: readonly string[]): Paper {
  const region = languages.map((tag) => new Intl.Locale(tag).region).find((one) => one !== undefined)
  return region !== undefined && letterPlaces.has(region) ? 'letter' : 'a4'
}
