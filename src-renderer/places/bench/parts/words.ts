import type { Chafe } from './part-types'
import type {
  Bait,
  Entrance,
  Float,
  FrameMember,
  Marks,
  Netting,
  Pot,
  Release,
  Rope,
} from '@shared/schema/pot'

export const partFieldWords = {
  add: 'Add',
  remove: 'Remove',
  removeRow: (row: string) => `Remove ${row.toLowerCase()}`,
  notSaid: 'Not said',
  shape: 'Shape',
  kind: 'Kind',
  material: 'Material',
  count: 'How many',
  bearing: 'Bearing from the front',
  bearingHint: 'Clockwise seen from above',
  width: 'Width',
  height: 'Height',
  length: 'Length',
  diameter: 'Diameter',
  mass: 'Mass',
  where: 'Where',

  gearKind: 'Counts as',
  gearKindHint: 'What the rules call it; limits differ by kind.',
  baseDiameter: 'Base diameter',
  topDiameter: 'Top diameter',
  folds: 'Folds flat',
  feet: 'Feet',
  chambers: 'Chambers',
  measuredMass: 'Weighed dry mass',
  measuredMassHint: 'A weighed pot beats the computed mass.',
  notes: 'Notes',

  barDiameter: 'Bar diameter',
  addMember: 'Add a ring or bar',
  ballastHeight: 'Height above the base',
  addBallast: 'Add a weight',
  noBallast: 'No weight beyond the frame.',

  twine: 'Twine diameter',
  bar: 'Mesh, knot to knot',
  wireBar: 'Mesh, wire to wire',
  knotted: 'Knotted',
  hanging: 'Hanging ratio',
  hangingHint: (ratio: string) => `${ratio} hangs the mesh square`,
  entangles: 'Loose enough to tangle a crab',

  addEntrance: 'Add an entrance',
  sill: 'Sill above the base',
  funnelDepth: 'Reaches in',
  onTop: 'On top',
  excluder: 'Turtle frame fitted',
  excluderWidth: 'Turtle frame width',
  excluderHeight: 'Turtle frame height',

  door: (place: string) => `${place} door`,
  addDoor: 'Add a door',
  purpose: 'For',

  chafeOn: 'Laid on',
  thickness: 'Thickness',

  holder: 'Holder',
  baitMass: 'Bait',
  baitHeight: 'Hangs at',

  rings: (n: number) => `Rings ${n}`,
  slots: (n: number) => `Slots ${n}`,
  ring: 'Ring',
  slot: 'Slot',
  addGap: 'Add escape gaps',
  bottomEdge: 'Lower edge above the base',
  corner: 'From the nearest corner',

  openingWidth: 'Opening width',
  openingHeight: 'Opening height',
  releaseEdge: 'Opening above the base',
  threads: 'Threads',
  loops: 'Single loops',

  legs: 'Legs',
  attach: 'Made fast to',
  haulBearing: 'Haul point, bearing',

  construction: 'Lay',
  ropeWeight: (n: number) => `Weight ${n}`,
  ropeWeights: 'Weights on the rope',
  addWeight: 'Add a weight',
  belowFloat: 'Below the float',

  colour: (n: number) => `Colour ${n}`,
  noColour: 'None',
  pattern: 'Pattern',
  reflective: 'Reflective band',
  purposeMade: 'Made as a float',
  stripe: 'Stripe width',
  marker: 'Second float on the line',
  markerFitted: 'Fitted',
  markerNone: 'None',

  onFloat: 'On the float',
  onTag: 'On a tag on the pot',
  onRopeTag: 'On a tag on the rope',
  written: 'As written',
  writtenHint: 'One line of the mark a line',
  says: 'It gives',
  letterHeight: 'Letter height',
  contrasting: 'Letters stand out from the ground',

  catchMass: 'Crabs aboard at the haul',
  stowSpace: 'The space there is for all pots',
  stowMax: 'Most it may weigh',
  stowPresets: 'Usual spaces',
  stowMeasure: 'Usual sizes to start from. Measure yours and change them.',
} as const

export const absentWords = {
  netting: 'No netting given.',
  entrances: 'No entrances given.',
  doors: 'No doors given.',
  chafe: 'Chafe gear not said.',
  bait: 'No bait holder given.',
  gaps: 'No escape gaps.',
  release: 'Release cord not said.',
  bridle: 'No bridle given.',
  rope: 'No rope given.',
  float: 'No float given.',
  catch: 'Catch not said; the haul is reckoned with an empty pot.',
  stow: 'How much room is there for all pots? Take a usual size to start from, then measure yours.',
} as const

export const shapeWords: Record<Pot['body']['shape'], string> = {
  round: 'Round',
  box: 'Box',
  cone: 'Cone',
  dome: 'Dome',
}

export const roleWords: Record<FrameMember['role'], string> = {
  'base-ring': 'Base ring',
  'middle-ring': 'Middle ring',
  'top-ring': 'Top ring',
  strut: 'Struts',
  'cross-bar': 'Cross-bars',
}

export const nettingWords: Record<Netting['material'], string> = {
  PE: 'PE twine',
  PA: 'Nylon twine',
  PP: 'PP twine',
  PES: 'Polyester twine',
  'wire-galvanised': 'Galvanised wire',
  'wire-coated': 'Coated wire',
}

export const entranceWords: Record<Entrance['kind'], string> = {
  funnel: 'Funnel',
  slit: 'Slit',
  'one-way': 'One-way door',
}

export const doorPlaceWords = { top: 'Top', side: 'Side', base: 'Base' } as const
export const doorPurposeWords = {
  bait: 'Bait',
  catch: 'Catch',
  'bait-and-catch': 'Bait and catch',
} as const

export const chafeWords: Record<Chafe['kind'], string> = {
  none: 'None',
  'rope-wrap': 'Rope wrap',
  hose: 'Hose',
  'double-netting': 'Doubled netting',
}

export const holderWords: Record<Bait['holder'], string> = {
  clip: 'Clip',
  'mesh-bag': 'Mesh bag',
  'wire-basket': 'Wire basket',
  jar: 'Jar',
}

export const baitPlaceWords: Record<Bait['at'], string> = { centre: 'Centre', side: 'Side', top: 'Top' }

export const releaseWords: Record<Release['kind'], string> = {
  none: 'None',
  'cord-lid': 'Cord holds the lid',
  'cord-panel': 'Cord holds a panel',
  'cord-door': 'Cord holds a door',
}

export const cordWords: Record<NonNullable<Release['material']>, string> = {
  cotton: 'Cotton',
  jute: 'Jute',
  sisal: 'Sisal',
  hemp: 'Hemp',
  synthetic: 'Synthetic',
}

export const attachWords = {
  'base-ring': 'Base ring',
  'middle-ring': 'Middle ring',
  'top-ring': 'Top ring',
  'top-centre': 'Middle of the top',
} as const

export const ropeWords: Record<Rope['material'], string> = {
  PP: 'Polypropylene, floats',
  PE: 'Polyethylene, floats',
  PA: 'Nylon, sinks',
  PES: 'Polyester, sinks',
  'lead-core': 'Lead core, sinks',
}

export const layWords: Record<Rope['construction'], string> = {
  '3-strand': 'Three-strand',
  '8-strand': 'Eight-strand',
  braid: 'Braid',
  'double-braid': 'Double braid',
}

export const floatShapeWords: Record<Float['shape'], string> = {
  sphere: 'Ball',
  cylinder: 'Cylinder',
  bullet: 'Bullet',
}

export const floatMaterialWords: Record<Float['material'], string> = {
  PVC: 'PVC, blown',
  EPS: 'Polystyrene foam',
  EVA: 'EVA foam',
  PE: 'Polyethylene',
  cork: 'Cork',
  wood: 'Wood',
}

export const patternWords: Record<Float['pattern'], string> = {
  solid: 'One colour',
  halves: 'Halves',
  stripe: 'Stripe',
}

export const markFieldWords: Record<NonNullable<Marks['float']>['fields'][number], string> = {
  'first-name': 'First name',
  'last-name': 'Last name',
  initial: 'One initial',
  initials: 'Initials',
  'birth-year': 'Year of birth',
  address: 'Address',
  postcode: 'Postcode',
  phone: 'Telephone',
  'licence-number': 'Licence number',
  'id-number': 'Identity number',
  'boat-name': 'Boat name',
  'boat-number': 'Boat number',
  'gear-code': 'Gear code',
  year: 'Year',
  'date-set': 'Date set',
}

/** Options of a select or a row of choices, in the order of the words. */
export function choices<K extends string>(names: Record<K, string>): { value: K; label: string }[] {
  return (Object.keys(names) as K[]).map((value) => ({ value, label: names[value] }))
}

/** A colour as it is said: `fluorescent-orange` reads "Fluorescent orange". */
export const colourWord = (colour: string) =>
  `${colour.charAt(0).toUpperCase()}${colour.slice(1)}`.replaceAll('-', ' ')
