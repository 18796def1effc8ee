/** Words of the check sheet. */
export const checkSheetWords = {
  conditions: 'Checked for',
  water: 'Water',
  depth: 'Depth',
  current: 'Strongest current',
  bottom: 'Bottom',
  region: 'Region',
  date: 'Date',
  people: 'People',
  pots: 'Pots carried',
  soak: 'Soak',
  notGiven: 'not given',
  verdicts: 'Verdicts',
  value: (value: string, limit: string, margin: string) =>
    [value && `Value ${value}`, limit && `limit ${limit}`, margin && `margin ${margin}`]
      .filter(Boolean)
      .join(', '),
  missing: (what: string) => `Missing: ${what}.`,
  nothing: 'Nothing to report.',
  toRead: 'Rules to read for yourself',
  toReadWhy: 'No program can check these. They apply, or may apply, here.',
  rulesChecked: (pack: string, day: string) => `Rules of ${pack}, as last checked on ${day}.`,
  noRules: 'No region chosen, so no rules were held against it.',
  caution:
    'Estimates carry their spread; they are no promise. Rules change: the official rules of the day decide. A rule that was not found is unknown, not absent.',
} as const
