import type { PartKind } from '@shared/schema/gear'
import { ropeDiscardRules, ropeGradeLooks, type RopeGrade } from '@shared/wear/rope'

/** What to look for on a kind of part, and what sends it to the bin. */
export interface InspectionPoints {
  readonly title: string
  readonly lookFor: readonly string[]
  readonly discardIf: readonly string[]
  readonly measure?: string
}

export const inspectionPoints: Record<PartKind, InspectionPoints> = {
  rope: {
    title: 'Rope',
    lookFor: [
      'Fuzz, and where: the last metres by the pot and by the float wear first',
      'Stiff, flat or shiny lengths',
      'Open a strand and look for powder',
      'Knots, splices and the eye',
    ],
    discardIf: ropeDiscardRules.map((rule) => rule.what),
    measure: 'Measure the diameter at the worst place and where it never runs over the rail.',
  },
  netting: {
    title: 'Netting',
    lookFor: [
      'Broken bars, most of all in a row',
      'Chafe at the base ring and at the lacing',
      'Knots that slip',
      'Brittle twine on the sunny side',
    ],
    discardIf: [
      'A hole that a legal crab gets through and that cannot be mended',
      'Twine that snaps between the fingers',
    ],
    measure: 'Count the most broken bars in a row on each panel.',
  },
  'bait-bag': {
    title: 'Bait bag',
    lookFor: ['Holes, and the draw-string'],
    discardIf: ['A hole larger than the bait'],
  },
  'bait-basket': {
    title: 'Bait basket',
    lookFor: ['Rust at the welds, the lid and its catch'],
    discardIf: ['A broken weld or a lid that does not stay shut'],
  },
  chafe: {
    title: 'Chafe gear',
    lookFor: ['Worn through to the ring or netting', 'Loose ends'],
    discardIf: ['The ring shows through'],
  },
  'release-cord': {
    title: 'Release cord',
    lookFor: [
      'That it is cotton, jute or hemp and no other cord helps it',
      'Strength by a firm pull',
      'That the lid or panel opens freely once the cord is off',
    ],
    discardIf: ['A season old', 'Half its strength gone', 'Thicker than the rules of the place allow'],
  },
  frame: {
    title: 'Frame',
    lookFor: [
      'Rust at welds and where rope or hooks rub',
      'Bent rings and struts',
      'White bloom: the zinc is going',
    ],
    discardIf: ['A cracked weld', 'A bar that has lost a third of its section'],
    measure: 'Measure the thinnest bar.',
  },
  float: {
    title: 'Float',
    lookFor: ['Cracks, soft places, creases at the eye', 'That it floats as high as it did'],
    discardIf: ['Split, water-logged or a tenth heavier', 'Colours or marks that cannot be read'],
  },
  tag: {
    title: 'Tag and marks',
    lookFor: ['That every letter can be read at arm’s length', 'That it says what the place asks now'],
    discardIf: ['A letter that cannot be read'],
  },
  ties: { title: 'Ties', lookFor: ['Chalky, cracked or missing ties'], discardIf: ['Cracks when bent'] },
  'door-hook': {
    title: 'Door hook',
    lookFor: ['Stretch, cracks, that the door shuts tight'],
    discardIf: ['A year old where it is rubber or natural fibre', 'A door that can be pushed open'],
  },
}

/** What the grades look like on parts that are no rope. */
const usualLooks: Record<RopeGrade, string> = {
  0: 'As new',
  1: 'Lightly worn',
  2: 'Worn, but sound',
  3: 'Badly worn: watch it',
  4: 'Any reason to discard it',
}

/** What each grade of an inspection looks like on a kind of part. */
export function gradeLooks(kind: PartKind): Record<RopeGrade, string> {
  if (kind === 'netting')
    return {
      ...usualLooks,
      1: 'Light, even fuzz',
      2: 'Heavy fuzz, colour lost, still supple',
      3: 'Thin, stiff or brittle in places',
    }
  if (kind !== 'rope') return usualLooks
  const looks = Object.entries(ropeGradeLooks).map(([grade, { look }]) => [grade, look])
  return Object.fromEntries(looks) as Record<RopeGrade, string>
}
