export const papers = ['a4', 'letter'] as const
export type Paper = (typeof papers)[number]

// Where the shops sell Letter and not A4.
const letterPlaces = new Set(['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'VE', 'CR', 'GT', 'PA', 'DO', 'SV', 'NI'])

// Systems also say `C`, `en_US` or `en-US@posix`, which are not language tags, so the place is read off the text.
const placeIn = /^[a-z]{2,3}(?:[-_][A-Za-z]{4})?[-_]([A-Z]{2})(?![A-Za-z])/

/** The paper that a reader of this language and place is likely to have. */
export function usualPaper(languages: readonly string[]): Paper {
  const region = languages.map((tag) => placeIn.exec(tag)?.[1]).find((one) => one !== undefined)
  return region !== undefined && letterPlaces.has(region) ? 'letter' : 'a4'
}
