/** Words of Runs. */
export const runWords = {
  title: 'Runs',
  loading: 'Reading the runs',
  empty: 'A day of setting and hauling goes here',
  emptyText: 'Runs count what each pot goes through. Add the pots you own in the Locker first.',
  toLocker: 'Go to the Locker',
  run: 'String of floats',
  newRun: 'New string',
  noRun: 'A new string',
  runName: (day: string, water: string | undefined, count: number) =>
    `${day}${water ? `, ${water}` : ''}, ${count} floats`,
  water: 'Water',
  noWater: 'Not stated',
  depth: 'Depth',
  temperature: 'Water temperature',
  bait: 'Bait',
  when: 'When',
  whenHint: 'Empty means now',
  work: 'What you are doing',
  set: 'Setting',
  haul: 'Hauling',
  dayCard: 'Bring in a day card',
  futureMoment: 'That moment has not come yet.',
} as const

export const setWords = {
  number: 'Float number',
  hint: 'Enter sets the next. A number, or several as 1-12, sets those.',
  next: 'Next to set',
  do: (numbers: readonly string[]) =>
    numbers.length === 1 ? `Set ${numbers[0] ?? ''}` : `Set ${numbers.length} floats`,
  unknown: (number: string) => `There is no pot with the number ${number}.`,
  notAshore: (number: string, where: string) => `Pot ${number} is not ashore: ${where.toLowerCase()}.`,
  done: (numbers: readonly string[]) =>
    numbers.length === 1
      ? `${numbers[0] ?? ''} is set.`
      : `${numbers.length} floats set, ${numbers[0] ?? ''} to ${numbers.at(-1) ?? ''}.`,
  ashore: 'Ashore',
  nothingAshore: 'Every pot is in the water, lost or retired.',
  setOne: (number: string) => `Set ${number}`,
} as const

export const haulWords = {
  number: 'Float number',
  hint: 'Enter takes the one expected next.',
  next: 'Next expected',
  upFromBelow: 'Come up to it from down-current.',
  take: (number: string) => `Haul ${number}`,
  none: 'Nothing is down on this string.',
  notDown: (number: string) => `Pot ${number} is not in the water, so it cannot be hauled.`,
  unknown: (number: string) => `There is no pot with the number ${number}.`,
  card: (number: string) => `What came up in ${number}`,
  down: (hours: string) => `down ${hours}`,
  kept: 'Kept',
  undersized: 'Undersized',
  female: 'Female',
  other: 'Other',
  less: (what: string) => `One ${what.toLowerCase()} less`,
  more: (what: string) => `One ${what.toLowerCase()} more`,
  baitLeft: 'Bait left',
  damage: 'Damage',
  note: 'Note',
  write: 'Write down',
  writeAndSet: 'Write down and set again',
  back: 'Back',
  done: (number: string) => `${number} is up.`,
  doneAndSet: (number: string) => `${number} is up and set again.`,
  move: (number: string) => `Most in ${number} were undersized. Move a little before setting it again.`,
  keys: 'K, U, F, O count one more, with Shift one less. B is the bait left, 1 to 8 the damage. Enter writes it down, S sets it again.',
} as const

export const missingWords = {
  title: (count: number) => (count === 1 ? 'A float was passed by' : `${count} floats were passed by`),
  explain: (count: number) =>
    count === 1
      ? 'It stays here until it is hauled, seen again or given up.'
      : 'They stay here until they are hauled, seen again or given up.',
  haulShort: 'Haul',
  seenShort: 'Still there',
  giveUpShort: 'Give up',
  haul: (number: string) => `Haul ${number}`,
  seen: (number: string) => `Still there: ${number}`,
  giveUp: (number: string) => `Give up ${number} as lost`,
  seenNote: (number: string) => `${number} was seen again and stays set.`,
  lostNote: (number: string) => `${number} is given up as lost. Report it where the rules ask for it.`,
} as const

export const stringWords = {
  title: 'On this string',
  none: 'No float is set on this string yet.',
  setAt: (time: string) => `set ${time}`,
  passed: 'passed by',
  caught: (kept: number, undersized: number, female: number, other: number) =>
    [
      `${kept} kept`,
      undersized > 0 ? `${undersized} undersized` : '',
      female > 0 ? `${female} female` : '',
      other > 0 ? `${other} other` : '',
    ]
      .filter(Boolean)
      .join(', '),
  sum: (up: number, all: number) => `${up} of ${all} up`,
  total: (kept: number) => `${kept} kept`,
  correctShort: 'Correct',
  correct: (number: string) => `Correct the haul of ${number}`,
} as const

export const dayCardImportWords = {
  title: 'Bring in a day card',
  explain:
    'A paper card typed off as CSV: a row a pot, with its number, when it was set and hauled and what came up. Times are by the clock of this machine.',
  day: 'Day, where the card has none',
  does: (count: number) => (count === 1 ? 'Write down 1 row' : `Write down ${count} rows`),
  done: (count: number) => `${count} rows of the card written down.`,
  refused: (line: number, why: string) => `Line ${line}: ${why}`,
  row: (number: string, what: readonly string[]) => `Pot ${number}: ${what.join(', ')}`,
} as const

export const dayCardFieldWords = {
  number: 'Number',
  date: 'Day',
  set: 'Set at',
  hauled: 'Hauled at',
  kept: 'Kept',
  undersized: 'Undersized',
  female: 'Female',
  other: 'Other',
  baitLeft: 'Bait left',
  note: 'Note',
} as const
