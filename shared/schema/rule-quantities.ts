import type { PartName } from './check'
import type { QuantityKind } from './rule-units'

/*
 * The closed set of quantities that a rule may name, each with its kind and the part it is about. How a quantity is
 * read off a pot, a trip or a water lives in the rules engine, one reader a name, and so do its words.
 */

interface QuantityEntry {
  readonly kind: QuantityKind
  readonly part: PartName
}

const of =
  <K extends QuantityKind>(kind: K) =>
  (part: PartName) => ({ kind, part })
const length = of('length')
const area = of('area')
const volume = of('volume')
const mass = of('mass')
const time = of('time')
const count = of('count')
const ratio = of('ratio')
const flag = of('flag')
const text = of('text')
const list = of('list')

export const ruleQuantities = {
  'body.shape': text('body'),
  'body.length': length('body'),
  'body.width': length('body'),
  'body.height': length('body'),
  'body.diameter': length('body'),
  'body.longest-side': length('body'),
  'body.volume': volume('body'),
  'body.base-area': area('body'),
  'body.folds-flat': flag('body'),
  'body.chambers': count('body'),

  'frame.thinnest-bar': length('frame'),
  'frame.rings': count('frame'),
  'frame.uprights': count('frame'),

  'mesh.bar': length('netting'),
  'mesh.diagonal': length('netting'),
  'mesh.stretched': length('netting'),
  'mesh.narrowed-bar': length('chafe'),
  'mesh.narrowed-diagonal': length('chafe'),
  'mesh.narrowed-stretched': length('chafe'),
  'mesh.material': text('netting'),
  'mesh.entangles': flag('netting'),
  'chafe.kind': text('chafe'),

  'entrances.count': count('entrances'),
  'entrances.over-haul-point': flag('bridle'),
  'entrance.width': length('entrances'),
  'entrance.height': length('entrances'),
  'entrance.shorter-side': length('entrances'),
  'entrance.longer-side': length('entrances'),
  'entrance.perimeter': length('entrances'),
  'entrance.aspect': ratio('entrances'),
  'entrance.depth': length('entrances'),
  'entrance.on-top': flag('entrances'),
  'entrance.excluder-fitted': flag('entrances'),
  'entrance.throat-height': length('entrances'),
  'entrance.throat-width': length('entrances'),
  'bait.blocks-entrance': flag('bait'),
  'bait.holder': text('bait'),

  'gaps.count': count('escape-gaps'),
  'gaps.per-chamber': count('escape-gaps'),
  'gaps.opposite': flag('escape-gaps'),
  'gap.diameter': length('escape-gaps'),
  'gap.width': length('escape-gaps'),
  'gap.height': length('escape-gaps'),
  'gap.bottom-edge': length('escape-gaps'),
  'gap.bottom-below-top': length('escape-gaps'),
  'gap.in-upper-half': flag('escape-gaps'),
  'gap.on-top': flag('escape-gaps'),
  'gap.corner': length('escape-gaps'),
  'gap.shape': text('escape-gaps'),

  'release.kind': text('release'),
  'release.material': text('release'),
  'release.cord-diameter': length('release'),
  'release.threads': count('release'),
  'release.loops': count('release'),
  'release.opening-width': length('release'),
  'release.opening-height': length('release'),
  'release.opening-shorter-side': length('release'),
  'release.opening-longer-side': length('release'),
  'release.bottom-edge': length('release'),
  'release.in-upper-half': flag('release'),

  'rope.diameter': length('rope'),
  'rope.length': length('rope'),
  'rope.sinks': flag('rope'),
  'rope.kept-under': flag('rope'),
  'rope.floating-length': length('rope'),

  'rope-weight.mass': mass('rope'),
  'rope-weight.below-float': length('rope'),

  'float.shape': text('float'),
  'float.smallest-side': length('float'),
  'float.diameter': length('float'),
  'float.length': length('float'),
  'float.volume': volume('float'),
  'float.freeboard': length('float'),
  'float.colours': list('float'),
  'float.pattern': text('float'),
  'float.stripe': length('float'),
  'float.material': text('float'),
  'float.purpose-made': flag('float'),
  'float.reflective': flag('float'),

  'marker-float.fitted': flag('float'),
  'marker-float.diameter': length('float'),
  'marker-float.length': length('float'),
  'marker-float.colours': list('float'),

  'marks.float': list('marks'),
  'marks.tag': list('marks'),
  'marks.rope-tag': list('marks'),
  'marks.anywhere': list('marks'),
  'marks.float-text': list('marks'),
  'marks.tag-text': list('marks'),
  'marks.letter-height': length('marks'),
  'marks.contrasting': flag('marks'),

  'trip.people': count('trip'),
  'trip.licences': count('trip'),
  'trip.boat': flag('trip'),
  'trip.tied-off': flag('trip'),
  'trip.attended': flag('trip'),
  'trip.soak': time('trip'),
  'trip.spacing': length('trip'),
  'trip.holds': list('trip'),
  'trip.species': list('trip'),

  'water.width': length('water'),
  'water.depth': length('water'),
} as const satisfies Record<string, QuantityEntry>

export type QuantityName = keyof typeof ruleQuantities
export const quantityNames = Object.keys(ruleQuantities) as QuantityName[]

/** Things a pot can have several of; a rule may ask about each, or about so many of them. */
export const itemKinds = ['entrance', 'gap', 'rope-weight'] as const
export type ItemKind = (typeof itemKinds)[number]

/** The item a quantity is read from, or nothing where it is read from the pot, trip or water as a whole. */
export function itemOf(name: QuantityName): ItemKind | undefined {
  return itemKinds.find((item) => name.startsWith(`${item}.`))
}
