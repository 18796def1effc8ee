import * as v from 'valibot'
import { bearingDeg, id, name, numberBetween, shortText, slug, wholeBetween } from './fields'

/*
 * A pot design, `*.pot.json`. Bearings run clockwise seen from above, from the pot's own front; heights are
 * from the base. A part that is left out is unknown, and what depends on it cannot be told.
 */

export const gearKinds = [
  'pot',
  'collapsible-trap',
  'dilly',
  'hoop-net',
  'drop-net',
  'lift-net',
  'ring-net',
  'star-trap',
  'creel',
] as const

const heightMm = numberBetween(0, 3000)

const body = v.variant('shape', [
  v.strictObject({
    shape: v.picklist(['round', 'cone', 'dome']),
    baseDiameterMm: numberBetween(100, 3000),
    topDiameterMm: numberBetween(20, 3000),
    heightMm: numberBetween(10, 2000),
    folds: v.boolean(),
    feet: wholeBetween(0, 12),
  }),
  v.strictObject({
    shape: v.literal('box'),
    lengthMm: numberBetween(100, 3000),
    widthMm: numberBetween(100, 3000),
    heightMm: numberBetween(10, 2000),
    folds: v.boolean(),
    feet: wholeBetween(0, 12),
  }),
])

const frameMember = v.strictObject({
  role: v.picklist(['base-ring', 'middle-ring', 'top-ring', 'strut', 'cross-bar']),
  material: slug,
  barDiameterMm: numberBetween(1, 60),
  count: v.optional(wholeBetween(1, 40)),
})

const ballastPiece = v.strictObject({
  material: slug,
  massKg: numberBetween(0, 100),
  heightMm,
})

export const nettingMaterials = ['PE', 'PA', 'PP', 'PES', 'wire-galvanised', 'wire-coated'] as const

const netting = v.strictObject({
  material: v.picklist(nettingMaterials),
  twineDiameterMm: numberBetween(0.3, 8),
  barLengthMm: numberBetween(5, 200),
  knotted: v.boolean(),
  hangingRatio: v.optional(numberBetween(0.2, 0.95)),
  /** Slack or loose netting that can tangle a crab. */
  entangles: v.optional(v.boolean()),
})

const entrance = v.strictObject({
  kind: v.picklist(['funnel', 'slit', 'one-way']),
  widthMm: numberBetween(20, 2000),
  heightMm: numberBetween(10, 1500),
  bearingDeg,
  sillMm: heightMm,
  onTop: v.optional(v.boolean()),
  /** How far the funnel reaches into the pot. */
  depthMm: v.optional(numberBetween(0, 1500)),
  /** Turtle or terrapin frame fixed in the entrance, by its inside opening. */
  excluder: v.optional(
    v.union([
      v.literal('none'),
      v.strictObject({ widthMm: numberBetween(10, 1000), heightMm: numberBetween(10, 500) }),
    ]),
  ),
})

const door = v.strictObject({
  where: v.picklist(['top', 'side', 'base']),
  purpose: v.picklist(['bait', 'catch', 'bait-and-catch']),
  bearingDeg: v.optional(bearingDeg),
})

const chafe = v.strictObject({
  kind: v.picklist(['none', 'rope-wrap', 'hose', 'double-netting']),
  thicknessMm: v.optional(numberBetween(0, 40)),
  on: v.optional(
    v.array(v.picklist(['base-ring', 'middle-ring', 'top-ring', 'strut', 'cross-bar', 'netting'])),
  ),
})

const bait = v.strictObject({
  holder: v.picklist(['clip', 'mesh-bag', 'wire-basket', 'jar']),
  massKg: numberBetween(0, 10),
  at: v.picklist(['centre', 'side', 'top']),
  heightMm,
})

const gapPlace = {
  count: wholeBetween(1, 24),
  bottomEdgeMm: heightMm,
  bearingDeg: v.optional(bearingDeg),
  onTop: v.optional(v.boolean()),
  /** Distance of the gap's edge from the nearest corner, partition or baffle. */
  cornerMm: v.optional(numberBetween(0, 2000)),
  chamber: v.optional(wholeBetween(1, 4)),
}

const escapeGap = v.variant('shape', [
  v.strictObject({ shape: v.literal('circle'), diameterMm: numberBetween(10, 500), ...gapPlace }),
  v.strictObject({
    shape: v.literal('rectangle'),
    widthMm: numberBetween(10, 1000),
    heightMm: numberBetween(10, 500),
    ...gapPlace,
  }),
])

const release = v.strictObject({
  kind: v.picklist(['none', 'cord-lid', 'cord-panel', 'cord-door']),
  material: v.optional(v.picklist(['cotton', 'jute', 'sisal', 'hemp', 'synthetic'])),
  diameterMm: v.optional(numberBetween(0.2, 20)),
  threads: v.optional(wholeBetween(1, 400)),
  /** Single loops or strands that hold the lid, panel or door; one where it is not said. */
  loops: v.optional(wholeBetween(1, 12)),
  openingWidthMm: v.optional(numberBetween(10, 2000)),
  openingHeightMm: v.optional(numberBetween(10, 2000)),
  bottomEdgeMm: v.optional(heightMm),
})

const bridle = v.strictObject({
  legs: wholeBetween(1, 6),
  bearingDeg,
  attach: v.picklist(['base-ring', 'middle-ring', 'top-ring', 'top-centre']),
})

export const ropeMaterials = ['PP', 'PE', 'PA', 'PES', 'lead-core'] as const

const rope = v.strictObject({
  material: v.picklist(ropeMaterials),
  construction: v.picklist(['3-strand', '8-strand', 'braid', 'double-braid']),
  diameterMm: numberBetween(2, 40),
  lengthM: numberBetween(0.5, 500),
  weights: v.optional(
    v.array(v.strictObject({ massKg: numberBetween(0, 20), belowFloatM: numberBetween(0, 500) })),
  ),
})

export const floatColours = [
  'white',
  'yellow',
  'orange',
  'red',
  'pink',
  'hot-pink',
  'green',
  'blue',
  'black',
  'brown',
  'grey',
  'purple',
  'fluorescent-orange',
  'fluorescent-yellow',
] as const

const floatCommon = {
  massKg: numberBetween(0, 50),
  material: v.picklist(['PVC', 'EPS', 'EVA', 'PE', 'cork', 'wood']),
  colours: v.pipe(v.array(v.picklist(floatColours)), v.minLength(1), v.maxLength(4)),
  pattern: v.picklist(['solid', 'halves', 'stripe']),
  reflective: v.optional(v.boolean()),
  /** False for a bottle, a can or anything else not made as a buoy. */
  purposeMade: v.optional(v.boolean()),
  stripeMm: v.optional(numberBetween(1, 500)),
}

const float = v.variant('shape', [
  v.strictObject({ shape: v.literal('sphere'), diameterMm: numberBetween(20, 1500), ...floatCommon }),
  v.strictObject({
    shape: v.picklist(['cylinder', 'bullet']),
    diameterMm: numberBetween(20, 1500),
    lengthMm: numberBetween(20, 2000),
    ...floatCommon,
  }),
])

/** A second, smaller float on the same line, where a place asks for one; `none` says that there is none. */
const markerFloat = v.union([
  v.literal('none'),
  v.strictObject({
    diameterMm: numberBetween(20, 1500),
    lengthMm: numberBetween(20, 2000),
    colours: v.pipe(v.array(v.picklist(floatColours)), v.minLength(1), v.maxLength(4)),
  }),
])

export const markFields = [
  'first-name',
  'last-name',
  'initial',
  'initials',
  'birth-year',
  'address',
  'postcode',
  'phone',
  'licence-number',
  'id-number',
  'boat-name',
  'boat-number',
  'gear-code',
  'year',
  'date-set',
] as const

const label = v.strictObject({
  text: v.pipe(v.array(shortText), v.maxLength(12)),
  fields: v.array(v.picklist(markFields)),
})

const marks = v.strictObject({
  float: v.optional(label),
  tag: v.optional(label),
  ropeTag: v.optional(label),
  letterHeightMm: v.optional(numberBetween(1, 500)),
  contrasting: v.optional(v.boolean()),
})

export const PotSchema = v.strictObject({
  format: v.literal('potwright/pot'),
  version: v.literal(1),
  id,
  name,
  gearKind: v.picklist(gearKinds),
  body,
  frame: v.optional(v.pipe(v.array(frameMember), v.maxLength(12))),
  ballast: v.optional(v.pipe(v.array(ballastPiece), v.maxLength(12))),
  netting: v.optional(netting),
  entrances: v.optional(v.pipe(v.array(entrance), v.maxLength(12))),
  doors: v.optional(v.pipe(v.array(door), v.maxLength(6))),
  chafe: v.optional(chafe),
  bait: v.optional(bait),
  escapeGaps: v.optional(v.pipe(v.array(escapeGap), v.maxLength(12))),
  release: v.optional(release),
  bridle: v.optional(bridle),
  rope: v.optional(rope),
  float: v.optional(float),
  markerFloat: v.optional(markerFloat),
  marks: v.optional(marks),
  /** Total chambers, where a pot is divided; some places ask for gaps in each. */
  chambers: v.optional(wholeBetween(1, 4)),
  /** Dry mass on the scales; a measured mass beats the computed one. */
  measuredMassKg: v.optional(numberBetween(0.05, 200)),
  catchKg: v.optional(numberBetween(0, 100)),
  notes: v.optional(v.pipe(v.string(), v.maxLength(4000))),
})

export type Pot = v.InferOutput<typeof PotSchema>
export type PotBody = Pot['body']
export type FrameMember = v.InferOutput<typeof frameMember>
export type Netting = v.InferOutput<typeof netting>
export type Entrance = v.InferOutput<typeof entrance>
export type EscapeGap = v.InferOutput<typeof escapeGap>
export type Rope = v.InferOutput<typeof rope>
export type Float = v.InferOutput<typeof float>
export type Bait = v.InferOutput<typeof bait>
export type Release = v.InferOutput<typeof release>
export type Marks = v.InferOutput<typeof marks>
