import type { PartName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { Bottom } from '@shared/schema/water'
import type { StripField } from './next-step'
import type { PartId } from './part-ids'

/** Words of the Bench. */
export const partWords: Record<PartId, string> = {
  body: 'Body',
  frame: 'Frame',
  ballast: 'Ballast',
  netting: 'Netting',
  entrances: 'Entrances',
  doors: 'Doors',
  chafe: 'Chafe gear',
  bait: 'Bait',
  'escape-gaps': 'Escape gaps',
  release: 'Release cord',
  bridle: 'Bridle',
  rope: 'Rope',
  float: 'Float',
  marks: 'Marks',
  catch: 'Catch',
  stow: 'Stowage',
}

/** What a finding is about, as a link that shows it. */
export const findingPartWords: Record<PartName, string> = {
  body: 'Show the body',
  frame: 'Show the frame',
  'base-ring': 'Show the base ring',
  'middle-ring': 'Show the middle ring',
  'top-ring': 'Show the top ring',
  strut: 'Show the struts',
  'cross-bar': 'Show the cross-bars',
  ballast: 'Show the ballast',
  netting: 'Show the netting',
  entrances: 'Show the entrances',
  doors: 'Show the doors',
  chafe: 'Show the chafe gear',
  bait: 'Show the bait',
  'escape-gaps': 'Show the escape gaps',
  release: 'Show the release cord',
  bridle: 'Show the bridle',
  rope: 'Show the rope',
  float: 'Show the float',
  marks: 'Show the marks',
  catch: 'Show the catch',
  trip: 'Go to the trip',
  water: 'Go to the water',
}

/** What to do where something is missing, on a button that goes there. */
export const stepWords: Record<StripField | 'stow', string> = {
  region: 'Choose the region',
  zone: 'Choose the zone',
  date: 'Give the date',
  people: 'Say how many go',
  licences: 'Give the licences',
  boat: 'Boat or not',
  current: 'Give the current',
  depth: 'Give the depth',
  bottom: 'Give the bottom',
  species: 'Choose the crab',
  attended: 'Say who stays',
  'tied-off': 'Tied off or not',
  soak: 'Give the soak',
  spacing: 'Give the distance',
  permits: 'Say which permits',
  'work-from': 'Give the hours',
  stow: 'Give the space',
}

export const gearKindWords: Record<Pot['gearKind'], string> = {
  pot: 'Pot',
  'collapsible-trap': 'Collapsible trap',
  dilly: 'Dilly',
  'hoop-net': 'Hoop net',
  'drop-net': 'Drop net',
  'lift-net': 'Lift net',
  'ring-net': 'Ring net',
  'star-trap': 'Star trap',
  creel: 'Creel',
}

export const bottomWords: Record<Bottom, string> = {
  mud: 'Mud',
  silt: 'Silt',
  'silty-sand': 'Silty sand',
  sand: 'Sand',
  'rippled-sand': 'Rippled sand',
  gravel: 'Gravel',
  rock: 'Rock',
}

export const stripWords = {
  title: 'Where, when and who',
  water: 'Water',
  typedIn: 'Typed in here',
  region: 'Region',
  noRegion: 'Not chosen',
  zone: 'Zone',
  wholeRegion: 'Whole region',
  date: 'Date',
  people: 'People',
  licences: 'Licences',
  boat: 'Boat',
  currentShort: 'Current',
  strongest: 'Strongest current',
  askingStation: 'Asking the station',
  depth: 'Depth',
  dries: 'Dries',
  bottom: 'Bottom',
  notGiven: 'Not given',
  tideRange: 'Tide range',
  more: 'Trip',
  moreLabel: 'More about the trip',
  pots: 'Pots carried',
  soak: 'Soak',
  species: 'Crab sought',
  anySpecies: 'Not chosen',
  spacing: 'Distance to the nearest other gear',
  workFrom: 'Set from',
  workTo: 'Hauled by',
  otherGear: 'Other gear carried',
  addGear: 'Add other gear',
  gearKind: 'Kind',
  gearCount: 'How many',
  removeGear: (kind: string) => `Remove ${kind.toLowerCase()}`,
  attended: 'Somebody stays with the gear',
  tiedOff: 'Tied to something fixed',
  notSaid: 'Not said',
  yes: 'Yes',
  no: 'No',
  fromWater: 'As predicted for the days of the trip. What the water says of itself is changed under Waters.',
  seeWater: 'Tide',
  seeWaterLabel: (name: string) => `See the tide at ${name}`,
} as const

/** Permits and standings as the packs name them; one that is not here is said as it is spelt. */
export const permitWords: Record<string, string> = {
  'waterfront-owner': 'Owner of waterfront property',
  'five-pot-licence': 'Five-pot licence',
  'gear-licence': 'Recreational gear licence',
  'trap-endorsement': 'Trap endorsement',
}

export const shelfWords = {
  open: 'Shelf',
  title: 'Shelf of designs',
  saved: 'Saved designs',
  none: 'No design saved yet. Start from one of the shapes beside this, or bring one in from a file.',
  start: 'Start a new one from',
  copyOf: (name: string) => `${name}, copy`,
  copy: 'Copy',
  remove: 'Remove',
  exportOne: 'Save as a file',
  importFiles: 'Bring in from a file',
  dropHere: 'Or drop design files anywhere on the Bench.',
  removed: (name: string) => `${name} was taken off the shelf.`,
  onBench: 'On the bench',
  menu: (name: string) => `What to do with ${name}`,
  savedAt: (when: string) => `Saved ${when}`,
  design: 'Design',
  parts: 'Parts',
  copyThis: 'Copy this design',
  openPart: (part: string) => `Open the part: ${part}`,
  group: 'Bench',
  name: 'Name of the design',
} as const

export const potViewWords = {
  tabs: 'The pot',
  pot: 'Pot',
  why: 'Why',
  fishing: 'Fishing',
  cuts: 'Parts and cuts',
  imageName: (name: string) => `${name}.png`,
  imageFailed: 'The picture could not be made. Nothing was lost. Try again with the pot in view.',
} as const

export const verdictPanelWords = {
  title: 'Verdicts',
  noFindings: 'Nothing to report yet.',
  caution: 'Local rules and licensed practice decide. Estimates carry their spread; they are no promise.',
  announce: (states: string) => `Verdicts now: ${states}`,
} as const

export const wornWords = {
  asNow: (number: string) => `Checked as pot ${number} is now:`,
  rope: (left: string) => `rope at ${left} of its strength,`,
  ropeUnknown: 'rope as new,',
  growth: (times: string) => `growth on the netting × ${times}.`,
  clean: 'netting clean.',
  asNew: 'Check as new',
} as const
