/** Words of the Locker. */
export const lockerWords = {
  title: 'Locker',
  pots: 'Pots owned',
  empty: 'The pots you own, by the number on the float',
  emptyText:
    'Each pot keeps its parts, what they have been through, and what inspections found. Add pots of a design from the Bench, or bring in a list you already keep.',
  add: 'Add pots',
  bringIn: 'Bring in a list',
  find: 'Find a number',
  none: 'No pot fits.',
  filters: {
    all: 'All',
    attention: 'Needs work',
    'in-water': 'In water',
    lost: 'Lost',
    retired: 'Retired',
  },
  filter: 'Show',
  count: (shown: number, all: number) =>
    shown === all ? (all === 1 ? '1 pot' : `${all} pots`) : `${shown} of ${all} pots`,
  needs: (decision: 'watch' | 'replace', part: string) =>
    decision === 'watch' ? `watch the ${part.toLowerCase()}` : `replace the ${part.toLowerCase()}`,
  ofDesign: (design: string) => design,
  noDesign: 'Design not on the shelf',
  tables: 'Tables',
  tableParts: 'Parts, for a spreadsheet',
  tableEvents: 'The whole history, for a spreadsheet',
  tableDue: 'What is due, for a spreadsheet',
  tableShopping: 'What to buy, for a spreadsheet',
  history: 'All that happened',
  judging: 'Working out how the parts stand',
  choosePot: 'Choose a pot to see its parts.',
  loading: 'Reading the locker',
} as const

export const potWords = {
  parts: 'Parts',
  history: 'History',
  photos: 'Photos',
  tabs: 'This pot',
  more: (number: string) => `More for pot ${number}`,
  pot: (number: string) => `Pot ${number}`,
  onBench: 'Check as it is now',
  setIt: 'Set it',
  lose: 'Give up as lost',
  find: 'Found',
  retire: 'Retire',
  clean: 'Cleaned and dried',
  store: (where: string) => `Stored: ${where.toLowerCase()}`,
  photo: 'Add a photo',
  lost: (number: string) => `Pot ${number} is down as lost.`,
  found: (number: string) => `Pot ${number} is found.`,
  retired: (number: string) => `Pot ${number} is retired with its parts.`,
  cleaned: (number: string) => `Pot ${number} is clean.`,
  stored: (number: string, where: string) => `Pot ${number} is stored ${where.toLowerCase()}.`,
  lostLaw: 'Lost gear goes on fishing. Report it where the rules of the place ask for it.',
  caught: (kept: number, undersized: number) => `${kept} kept, ${undersized} undersized so far`,
  since: (day: string) => `since ${day}`,
  storedIn: (where: string) => `stored ${where.toLowerCase()}`,
  noDesignPicture: 'The design of this pot is not on the shelf, so it cannot be drawn.',
} as const

export const partWords = {
  inspect: 'Inspect',
  replace: 'Replace',
  repair: 'Mend',
  move: 'Move to another pot',
  photo: 'Photo of damage',
  more: (part: string) => `More for the ${part.toLowerCase()}`,
  inspectLabel: (part: string) => `Inspect the ${part.toLowerCase()}`,
  replaceLabel: (part: string) => `Replace the ${part.toLowerCase()}`,
  since: (day: string) => `in since ${day}`,
  hauls: (count: number) => (count === 1 ? '1 haul' : `${count} hauls`),
  days: (days: number) => (days === 1 ? '1 day in water' : `${days} days in water`),
  left: (remaining: string) => `Lasts ${remaining}`,
  leftUnknown: 'How long it lasts cannot be told',
  strength: (low: string, high: string) => `Strength left ${low} to ${high}`,
  looked: (day: string) => `looked at ${day}`,
  neverLooked: 'never looked at',
  none: 'This pot has no parts written down.',
} as const

export const addWords = {
  title: 'Add pots',
  design: 'Of the design',
  numbers: 'Numbers on the floats',
  numbersHint: 'As 1-40, or 3, 5, 8-12',
  since: 'In use since',
  parts: 'Parts on each pot',
  partsHint: 'As the design has them. Leave out what you do not want to keep count of.',
  keep: (part: string) => `Keep count of the ${part.toLowerCase()}`,
  cost: 'Cost of one',
  supplier: 'Where from',
  add: (count: number) => (count === 1 ? 'Add 1 pot' : `Add ${count} pots`),
  added: (count: number) => (count === 1 ? '1 pot added.' : `${count} pots added.`),
  twice: (numbers: readonly string[]) =>
    numbers.length === 1
      ? `The number ${numbers[0] ?? ''} is on another pot in use.`
      : `These numbers are on other pots in use: ${numbers.slice(0, 8).join(', ')}.`,
  fromBench: (name: string) => `${name} (from the Bench)`,
  futureDay: 'That day has not come yet.',
} as const

export const workWords = {
  inspectTitle: (part: string, number: string) => `Look at the ${part.toLowerCase()} of pot ${number}`,
  lookFor: 'Look for',
  discardIf: 'Discard if',
  grade: 'Grade',
  gradeNone: 'Not graded',
  diameterLoss: 'Diameter lost',
  brokenBars: 'Broken bars in a row',
  mendAt: (bars: number, crab: string, through: number) =>
    `Mend at ${bars}: a legal ${crab.toLowerCase()} gets out through ${through}.`,
  photos: 'Photos of it',
  addPhoto: 'Add a photo',
  note: 'Note',
  on: 'When',
  write: 'Write down',
  inspected: (part: string, number: string) => `${part} of pot ${number} looked at.`,
  replaceTitle: (part: string, number: string) => `New ${part.toLowerCase()} on pot ${number}`,
  material: 'Material',
  diameter: 'Diameter',
  length: 'Length',
  bar: 'Bar of the mesh',
  cost: 'Cost',
  supplier: 'Where from',
  reason: 'Why',
  fromStock: 'Take it from stock',
  replaced: (part: string, number: string) => `${part} of pot ${number} replaced.`,
  repairTitle: (part: string, number: string) => `Mend the ${part.toLowerCase()} of pot ${number}`,
  what: 'What was done',
  whatNeeded: 'Say in a few words what was done.',
  leftBroken: 'Broken bars left',
  repaired: (part: string, number: string) => `${part} of pot ${number} mended.`,
  moveTitle: (part: string, number: string) => `Move the ${part.toLowerCase()} of pot ${number}`,
  moveTo: 'To pot',
  moveHint: 'A part of the same kind there comes back in exchange.',
  move: 'Move it',
  moved: (part: string, number: string) => `${part} moved to pot ${number}.`,
} as const

export const photoWords = {
  none: 'Photos of damage go here.',
  kept: 'JPEG, PNG or WebP, kept no larger than 2,000 points across, in the photos folder of your data. Backups hold them too.',
  add: 'Add a photo',
  part: 'Part',
  wholePot: 'The pot',
  takeBack: 'Take back',
  larger: (what: string) => `Show larger: ${what}`,
  caption: 'What it shows',
  tooOdd: (name: string) => `${name} is not a photo that can be read. Nothing was added.`,
  added: 'Photo added.',
  of: (number: string) => `Photo of pot ${number}`,
  missing: 'The photo is not here.',
} as const

export const problemWords = {
  title: 'Things that do not add up',
  count: (count: number) => (count === 1 ? '1 thing does not add up' : `${count} things do not add up`),
  takeBack: 'Take back',
  showPot: (number: string) => `Show pot ${number}`,
  setAside: 'Put unreadable lines aside',
  aside: (count: number) => `${count} lines put aside in a file of their own.`,
  explain: 'Nothing is dropped: what does not fit stays in the history and is told here.',
  from: (machine: string) => `written on ${machine}`,
} as const

export const historyWords = {
  none: 'Nothing has happened yet.',
  takeBack: 'Take back',
  bringBack: 'Bring back',
  correct: 'Correct',
  correctTitle: (what: string) => `Correct: ${what}`,
  corrected: 'corrected',
  correctedNote: 'Corrected. The first entry stays in the history.',
  undone: 'taken back',
  more: 'Show earlier',
} as const

export const inventoryImportWords = {
  title: 'Bring in a list of gear',
  explain:
    'A table as CSV with a header line: a row a pot, or a row a part with the number of its pot repeated. Nothing is written before you have seen what fits.',
  usualDesign: 'Design, where the file names none',
  row: (number: string, parts: readonly string[]) =>
    parts.length === 0 ? `Pot ${number}, no parts` : `Pot ${number}: ${parts.join(', ')}`,
} as const

export const inventoryFieldWords = {
  number: 'Number',
  design: 'Design',
  kind: 'Part',
  material: 'Material',
  diameterMm: 'Diameter (mm)',
  lengthM: 'Length (m)',
  cost: 'Cost',
  installedOn: 'In use since',
  supplierNote: 'Where from',
} as const
