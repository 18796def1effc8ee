import type { Confidence, Standing } from '@shared/schema/check'

/** Words of the controls and of whatever every place shares. A place keeps its own words beside it. */

export const standingWords: Record<Standing, string> = {
  law: 'Law',
  advice: 'Advice',
  proposal: 'Proposed, not in force',
  engineering: 'Estimate',
}

export const confidenceWords: Record<Confidence, string> = {
  read: 'Read at the source',
  memory: 'From memory, not yet checked',
  conflicting: 'Sources disagree',
  user: 'Your own entry',
  derived: 'Worked out from other facts',
}

/** What to do about a damaged file that was set aside, where an earlier version was found. */
export const asideWords = {
  'take-other': 'Put it back',
  'keep-current': 'Leave it aside',
} as const

export const versionWords = {
  'keep-both': 'Keep both',
  'keep-current': 'Keep the one here',
  'take-other': 'Take the other one',
} as const

export const words = {
  toBackups: 'Look in the backups',
  notANumber: (field: string, kept: string) => `${field} needs a number. It stays at ${kept}.`,
  tooSmall: (field: string, least: string, kept: string) =>
    `${field} must be at least ${least}. It stays at ${kept}.`,
  tooLarge: (field: string, most: string, kept: string) =>
    `${field} must be at most ${most}. It stays at ${kept}.`,
  notWhole: (field: string, kept: string) => `${field} must be a whole number. It stays at ${kept}.`,
  unset: 'not given',
  close: 'Close',
  cancel: 'Cancel',
  undo: 'Undo',
  dismiss: 'Dismiss',
  more: 'More',
  asTable: 'Show the numbers as a table',
  asChart: 'Show the chart',
  source: 'Where this comes from',
  sourceChecked: (day: string) => `Checked on ${day}`,
  sourceDated: (day: string) => `Dated ${day}`,
  openSource: 'Open the source',
  leaveTitle: 'Open this page in your browser?',
  leaveText: 'Potwright sends nothing along. The page may have changed since it was read.',
  stay: 'Stay here',
  open: 'Open',
  notSecure: 'not a secure page, so not opened from here',
  notCited: 'not a page that the shipped rules cite, so not opened from here',
  readRule: 'Read the rule',
  mine: 'Yours',
  value: 'Value',
  limit: 'Limit',
  margin: 'Margin',
  missing: 'Missing',
  noRows: 'Nothing to list',
  sortBy: (column: string) => `Sort by ${column}`,
  chartHelp: 'Left and right arrows read the values.',
  paletteTitle: 'Go to or do',
  palettePrompt: 'Type what you want to do',
  paletteNone: 'Nothing by that name',
  shortcutsTitle: 'Keys',
} as const
