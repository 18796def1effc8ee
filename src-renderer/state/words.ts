/** What the state says of itself in notices. */
export const stateNotes = {
  apart: (name: string) => `${name} (from this bench)`,
  keptApart: (name: string, apart: string) =>
    `${name} was changed elsewhere meanwhile. Both are kept; yours goes on as “${apart}”.`,
  changedElsewhere: (name: string) => `${name} was changed elsewhere. It lies here as it is now.`,
  brought: (name: string) => `${name} was brought in.`,
  refused: (file: string, why: string) => `${file}: ${why}`,
  takenBack: 'Taken back.',
  notJudged: 'How the parts stand could not be worked out. Nothing was lost. Open this place again.',
  rulesBrought: (name: string) => `Rules for ${name} were brought in and are in use.`,
  rulesRefused: (file: string, why: string) => `${file}: ${why} The rules in use stay as they were.`,
  notRules: 'This is not a file of rules.',
  openTable:
    'The table has commas between its cells and a full stop in its numbers. Bring it into your spreadsheet by its import, with English numbers.',
} as const
