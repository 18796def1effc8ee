import type { Subject } from '@shared/schema/rule-pack'
import type { Standing } from '@shared/schema/check'

/** Words of the Rulebook. */
export const subjectWords: Record<Subject, string> = {
  'gear-kinds': 'Kinds of gear',
  counts: 'How many',
  size: 'Size of the pot',
  mesh: 'Mesh',
  entrances: 'Entrances',
  'turtle-frames': 'Frames that keep turtles out',
  'escape-gaps': 'Escape gaps',
  release: 'Release',
  rope: 'Rope',
  float: 'Float',
  marking: 'Marking',
  bait: 'Bait',
  attendance: 'Soak and staying with the gear',
  seasons: 'Seasons',
  hours: 'Hours',
  areas: 'Areas',
  spacing: 'Distance to other gear',
  licence: 'Licence',
  catch: 'Catch',
  other: 'Other',
}

export const sureWords = {
  read: 'Read in a source',
  memory: 'Recalled, not read',
  conflicting: 'Sources disagree',
} as const

export const bookStanding: Record<Exclude<Standing, 'engineering'>, string> = {
  law: 'Law',
  advice: 'Advice',
  proposal: 'Proposed',
}

export const bookWords = {
  group: 'Rulebook',
  views: 'What to see of the rules',
  read: 'One region',
  compare: 'Side by side',
  legal: 'Where is this pot legal?',
  counts: 'How many pots',
  own: 'Your own rules',
  search: 'Search all regions',
  searchPrompt: 'A word, a size, a species',
  searchClear: 'Clear the search',
  officialDecides: 'The official rules of the day decide. Look them up before you go.',
  found: (count: number, regions: number) =>
    `${count} ${count === 1 ? 'entry' : 'entries'} in ${regions} ${regions === 1 ? 'region' : 'regions'}`,
  foundNone: (query: string) => `Nothing on “${query}”`,
  foundNoneText:
    'Try fewer or other words. That nothing is found here does not mean that there is no such rule.',
  species: 'Species',
  noPacks: 'No rules could be read',
  noPacksText: 'Start Potwright again. If it stays so, the files it came with are damaged.',
  problems: 'Rules of yours that are not in use',
} as const

export const readWords = {
  regions: 'Regions',
  mine: 'Yours',
  old: 'Old',
  subjects: 'On this page',
  checkedOn: (day: string) => `Held against its sources on ${day}.`,
  newest: (day: string) => `Youngest dated copy: ${day}.`,
  noDates: 'None of the copies carries a date.',
  oldNotice: 'These sources are more than a year old. Rules may have changed: look up the official page.',
  official: 'Official page',
  counted: (checked: number, shown: number, unknown: number) =>
    [
      `${checked} ${checked === 1 ? 'rule' : 'rules'} checked by Potwright`,
      `${shown} for you to read`,
      ...(unknown > 0 ? [`${unknown} ${unknown === 1 ? 'subject' : 'subjects'} not found`] : []),
    ].join(', '),
  whole: 'The whole of this region is your own copy.',
  someMine: (count: number) =>
    count === 1 ? 'One entry here is your own.' : `${count} entries here are your own.`,
  readItYourself: 'Read it yourself.',
  disagree: 'The sources say',
  noSuchRule: 'no such rule',
  yours: (day: string) => `Yours, ${day}`,
  yoursPlain: 'Yours',
  replaces: 'In place of',
  note: 'Note',
  appliesTo: 'Applies to',
  source: 'Source',
  dated: (day: string) => `copy dated ${day}`,
  undated: 'copy without a date',
  yearOld: 'more than a year old',
  notFound: 'Searched for and not found',
  notFoundText: 'Unknown, not unlimited.',
  unclear: 'Nothing can be called legal without it.',
  changes: 'Changes known',
  sources: 'All sources',
  checkedThis: 'I checked this',
  editMine: 'Change my rule',
  dropMine: 'Take my rule away',
  editEntry: 'Change my entry',
  dropEntry: 'Take my entry away',
  addSpecies: 'Add a species of your own',
  addRule: 'Add a rule of your own',
  compareWith: 'Set beside another region',
  gauge: 'Measure in the Gauge',
  catchTitle: 'What may be kept',
  menu: (name: string) => `More for ${name}`,
} as const

export const compareWords = {
  regions: 'Regions side by side',
  add: 'Add a region',
  drop: (name: string) => `Take ${name} out`,
  onlyDifferences: 'Only what differs',
  differs: 'Differs',
  same: 'Same',
  silent: 'No rule found',
  notFound: 'Searched for, not found',
  hint: 'Choose two to four regions. Nothing found does not mean that there is no rule.',
  counted: (differ: number, all: number) => `${differ} of ${all} lines differ`,
  caption: 'Rules side by side',
  about: 'About',
} as const

export const legalWords = {
  title: (pot: string) => `Where is “${pot}” legal?`,
  terms: (people: string, day: string) => `For ${people}, on ${day}. Change both on the Bench.`,
  people: (count: number | undefined) =>
    count === undefined ? 'a crew not given' : count === 1 ? 'one person' : `${count} people`,
  holds: 'Meets every rule found',
  close: 'Meets the law found; advice or a proposal asks for more',
  'cannot-tell': 'Cannot tell',
  fails: 'Breaks a rule',
  more: (count: number) => `and ${count} more`,
  fewer: 'Show the worst only',
  reasons: (name: string) => `Reasons for ${name}`,
  toBench: 'Take this region to the Bench',
  toRule: 'Read the rule',
  caution: 'A region that holds here holds by the rules that were found, no more.',
  none: 'No region',
} as const

export const countWords = {
  region: 'Region',
  noRegion: 'Not chosen',
  chooseRegion: 'Choose a region to count for.',
  zone: 'Zone',
  wholeRegion: 'Whole region',
  people: 'People aboard',
  licences: 'Licences',
  boat: 'From a boat',
  inHand: 'Pots in hand',
  inHandHint: 'How many of each design you take along.',
  onBench: 'on the bench',
  may: 'may be set in all',
  noLimit: 'No limit on numbers was found for this gear. That does not mean there is none.',
  cannotTell: (missing: string) => `Cannot tell without knowing ${missing}.`,
  asIfAll: (missing: string) => `Counted as if every limit below applies. Which do depends on ${missing}.`,
  dependsOn: (missing: string) => `Depends on ${missing}.`,
  spare: (spare: number) =>
    spare > 0 ? `Room for ${spare} more` : spare === 0 ? 'No room for more' : `Leave ${-spare} ashore`,
  withOne: (allowed: string) => `With one more person aboard, with a licence: ${allowed}`,
  withOneSame: 'One more person aboard changes nothing.',
  limit: 'Limit',
  allowed: 'Allowed',
  taken: 'In hand',
  oneMore: 'One more person',
  illegal: 'Pots that make the trip illegal whatever their number',
  illegalNone: 'None of these pots breaks a rule of its own that was found.',
  noPots: 'No pots in hand yet. Put a number beside a design.',
  trip: 'The crew',
  limits: 'Every limit on numbers',
} as const

export const ownWords = {
  none: 'No rules of your own yet',
  noneText:
    'Put your own value in place of one that you looked up, add a rule that is missing, or start a region that Potwright does not have. Yours are kept through updates and marked wherever they count.',
  start: 'Start or copy a region',
  import: 'Bring in from a file',
  export: 'Save as a file',
  remove: 'Remove',
  removeAll: (name: string) => `Remove your rules for ${name}`,
  removed: (name: string) => `Your rules for ${name} were removed.`,
  ruleRemoved: (name: string) => `Your entry for ${name} was taken away.`,
  kept: (name: string) => `Your entry for ${name} is in use.`,
  brought: (name: string) => `Rules for ${name} were brought in and are in use.`,
  over: (count: number) =>
    count === 1 ? 'One entry laid over the shipped ones' : `${count} entries laid over the shipped ones`,
  whole: (count: number) => `A whole region of your own, ${count} ${count === 1 ? 'entry' : 'entries'}`,
  open: 'Read',
  edit: 'Change',
  add: 'Add a rule',
  addSpecies: 'Add a species',
  menu: (name: string) => `What to do with your rules for ${name}`,
  emptyPack: 'No rules in it yet.',
} as const
