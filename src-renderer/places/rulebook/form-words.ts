import type { BagLimit, Species } from '@shared/schema/rule-species'
import type { BodyKind } from './own/rule-draft'

/** Words of the forms in which rules are written and changed. */
export const formWords = {
  shadowTitle: 'I checked this',
  shadowIntro: 'Your value stands in place of the shipped one until you take it away.',
  builtIn: 'Shipped',
  addTitle: (region: string) => `A rule of your own for ${region}`,
  editTitle: 'Change my rule',
  checkedOn: 'Checked on',
  says: 'The rule in one sentence',
  saysHint: 'It is read out with every finding.',
  note: 'Note',
  noteHint: 'Where you looked, or whom you asked.',
  source: 'Where it is written',
  sourceHint: 'Title of the page, leaflet or sign. Left empty, it is your own note.',
  link: 'Address of the page',
  subject: 'Subject',
  standing: 'Standing',
  law: 'Law',
  advice: 'Advice',
  proposal: 'Proposed',
  how: 'How it is checked',
  keepHow: 'Check it as before',
  whatIsNew: 'What is different',
  otherFigure: 'The figure',
  otherWords: 'Only the words',
  otherCheck: 'The whole rule',
  incomplete: 'Something is left out. Nothing was changed: fill in how the rule is checked.',
  what: 'What it is about',
  least: 'Bound',
  atLeast: 'At least',
  atMost: 'At most',
  value: 'Value',
  unit: 'Unit',
  must: 'Must be',
  yes: 'Yes',
  no: 'No',
  values: 'Words, with commas between',
  valuesHint: 'As the parts on the Bench name them, in lower case with dashes.',
  list: 'The gear must',
  'one-of': 'be one of these',
  'none-of': 'be none of these',
  includes: 'have all of these',
  per: 'Counted',
  limits: 'No more than',
  fromPeople: 'From so many people up',
  seasonIs: 'In these parts of the year it is',
  open: 'Open',
  closed: 'Closed',
  seasonFrom: 'From',
  seasonTo: 'To',
  addSeason: 'Add a season',
  dropSeason: (number: number) => `Take season ${number} away`,
  dayOf: (end: string) => `${end}, day`,
  monthOf: (end: string) => `${end}, month`,
  inForceFrom: 'In force from',
  inForceTo: 'In force until',
  inForceHint: 'As 2026-12-03; a month or a year will do. Left empty: at all times.',
  needsDate:
    'The dates in force do not fit: write them as 2026-12-03, 2026-12 or 2026, the earlier one first. Nothing was changed.',
  reason: 'Why a person has to read it',
  gear: 'Kinds of gear',
  gearHint: 'None chosen: every kind.',
  zones: 'Zones',
  zonesHint: 'None chosen: the whole region.',
  zone: 'Zone',
  wholeRegion: 'Whole region',
  save: 'Use my rule',
  needsSays: 'Write the rule in one sentence.',
  packTitle: 'Start or copy a region',
  packFrom: 'Start from',
  packEmpty: 'Nothing: add the rules yourself',
  packRegion: 'Region code',
  packRegionHint: 'As US-WA: two letters of the country, a dash, and up to four letters or digits.',
  packName: 'Name',
  packAuthority: 'Who makes the rules there',
  packStandsIn: (name: string) =>
    `This stands in place of the shipped rules for ${name}, and updates to those no longer come through.`,
  packSave: 'Start it',
} as const

export const bodyWords: Record<BodyKind, string> = {
  number: 'A size or a number',
  flag: 'Yes or no',
  words: 'Words: colours, marks, materials',
  count: 'How many pieces',
  season: 'A season, open or closed',
  forbidden: 'Never allowed here',
  shown: 'Only to be read',
}

export const perWords = {
  person: 'per person',
  licence: 'per licence',
  boat: 'per boat',
  crew: 'for the whole crew',
} as const

/** Words of the form for what may be kept of one species. */
export const speciesFormWords = {
  addTitle: (region: string) => `A species of your own for ${region}`,
  editTitle: (crab: string) => `${crab}: I checked this`,
  name: 'What it is called',
  scientific: 'Scientific name',
  scientificHint: 'The rest of Potwright knows it by this, where it is given.',
  method: 'Measured by',
  how: 'In the words of the source',
  howHint: 'Where the calliper goes.',
  atLeast: 'At least',
  atMost: 'At most',
  unit: 'Unit',
  sex: 'Sex',
  eitherSex: 'Either',
  of: 'Of',
  scope: 'Counted',
  per: 'In',
  anyTime: 'no time given',
  kind: 'As',
  addSizeDates: 'Only at some dates',
  combinedWith: 'Counted together with',
  combinedHint: 'None chosen: by itself.',
  unlimited: 'The source says that there is no limit',
  keep: 'What goes back',
  male: 'Males',
  female: 'Females',
  eggBearing: 'With eggs',
  softShell: 'Soft shell',
  season: 'When',
  seasonHint: 'No season given: all year.',
  addSeason: 'Add a season in which it may be kept',
  save: 'Use my entry',
  needsName: 'Write what it is called. Nothing was changed.',
  needsSize:
    'A size limit is not filled in: give the least or the greatest size, the least no larger than the greatest, and whole dates. Nothing was changed.',
  needsBag:
    'A number is left out: fill it in, take the line away, or say that the source states no limit. Nothing was changed.',
  needsDays: 'A season is not filled in: give a day of the calendar for both ends. Nothing was changed.',
} as const

export const sizeRowWords = {
  title: 'Size',
  none: 'No size limit known. That does not mean that there is none.',
  add: 'Add a size limit',
  row: (number: number) => `Size limit ${number}`,
  drop: (number: number) => `Take size limit ${number} away`,
} as const

export const bagRowWords = {
  title: 'How many',
  none: 'No number known. That does not mean that there is none.',
  add: 'Add a number',
  row: (number: number) => `Number ${number}`,
  drop: (number: number) => `Take number ${number} away`,
} as const

export const keepWords: Record<Species['keep']['male'], string> = {
  yes: 'May be kept',
  no: 'Goes back',
  'not-found': 'Not known',
}

export const bagUnitWords: Record<BagLimit['unit'], string> = {
  crabs: 'crabs',
  lobsters: 'lobsters',
  animals: 'animals',
  claws: 'claws',
  dozen: 'dozen crabs',
  bushel: 'bushels',
  litre: 'litres',
  gallon: 'gallons',
  'gallon-claws': 'gallons of claws',
  kg: 'kg',
}

export const bagScopeWords: Record<BagLimit['scope'], string> = {
  person: 'per person',
  boat: 'per boat',
  licence: 'per licence',
}

export const bagKindWords: Record<BagLimit['kind'], string> = {
  bag: 'taken',
  possession: 'in possession',
}

export const bagPerWords: Record<NonNullable<BagLimit['per']>, string> = {
  day: 'a day',
  week: 'a week',
  '24-hours': '24 hours',
}

/** Choices of a list, in the order of their words. */
export const options = <T extends string>(words: Record<T, string>) =>
  (Object.keys(words) as T[]).map((value) => ({ value, label: words[value] }))

export const sexOptions = options({ male: 'Males', female: 'Females' })
