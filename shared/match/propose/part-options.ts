import type { Materials } from '@shared/schema/materials'
import { floatColours, type Pot } from '@shared/schema/pot'

/** Designs that differ from one in a single part, the part as it is among them. */
export type PartOptions = (pot: Pot, materials: Materials) => readonly Pot[]

const ringSizesMm = [60, 105, 108, 110, 111, 120] as const
const slotSizesMm = [
  [100, 36],
  [120, 46],
  [120, 50],
] as const
const meshBarsMm = [20, 25, 30, 35, 40, 50, 52] as const
const baitMassesKg = [0.3, 0.5, 0.8, 1.2] as const
const entranceSizesMm = [
  [180, 100],
  [220, 110],
  [260, 120],
  [300, 130],
] as const
// Room left above an opening for the top ring and its lacing.
const underTopMm = 25

const gaps: PartOptions = (pot) => {
  const gapAt = (heightMm: number) => Math.max(0, pot.body.heightMm - heightMm - underTopMm)
  const rings = ringSizesMm
    .filter((diameterMm) => diameterMm + 2 * underTopMm < pot.body.heightMm)
    .flatMap((diameterMm) =>
      [2, 3, 4].map((count) => [
        { shape: 'circle' as const, diameterMm, count, bottomEdgeMm: gapAt(diameterMm), bearingDeg: 45 },
      ]),
    )
  const slots = slotSizesMm.flatMap(([widthMm, heightMm]) =>
    [1, 2, 4].map((count) => [
      { shape: 'rectangle' as const, widthMm, heightMm, count, bottomEdgeMm: 20, bearingDeg: 45 },
    ]),
  )
  return [[], ...rings, ...slots].map((escapeGaps) => ({ ...pot, escapeGaps }))
}

const releases: PartOptions = (pot, materials) => [
  { ...pot, release: { kind: 'none' } },
  ...materials.cords
    .filter(({ material }) => material !== 'synthetic')
    .flatMap(({ material, diameterMm, threads }) =>
      (['cord-lid', 'cord-panel'] as const).map((kind): Pot => ({
        ...pot,
        release: {
          kind,
          material,
          diameterMm,
          ...(threads !== undefined && { threads }),
          ...(kind === 'cord-panel' && { openingWidthMm: 130, openingHeightMm: 130 }),
        },
      })),
    ),
]

const meshes: PartOptions = (pot) => {
  const { netting } = pot
  return netting ? meshBarsMm.map((barLengthMm) => ({ ...pot, netting: { ...netting, barLengthMm } })) : []
}

const entrances: PartOptions = (pot) =>
  entranceSizesMm.map(([widthMm, heightMm]) => ({
    ...pot,
    entrances: (pot.entrances ?? []).map((entrance) => ({ ...entrance, widthMm, heightMm })),
  }))

const baits: PartOptions = (pot, materials) => {
  const { bait } = pot
  if (!bait) return []
  return materials.baitHolders.flatMap(({ holder }) =>
    baitMassesKg.map((massKg) => ({ ...pot, bait: { ...bait, holder, massKg, at: 'centre' as const } })),
  )
}

const colours: PartOptions = (pot) => {
  const { float } = pot
  if (!float) return []
  const halves = (['white', 'yellow', 'orange'] as const).map((other) => ['red', other] as const)
  return [
    ...floatColours.map((colour) => ({
      ...pot,
      float: { ...float, colours: [colour], pattern: 'solid' as const },
    })),
    ...halves.map((pair) => ({
      ...pot,
      float: { ...float, colours: [...pair], pattern: 'halves' as const },
    })),
  ]
}

const ropes: PartOptions = (pot) => {
  const { rope } = pot
  if (!rope) return []
  return (['PES', 'PA', 'lead-core', 'PP', 'PE'] as const).map((material) => ({
    ...pot,
    rope: { ...rope, material, construction: material === 'lead-core' ? 'braid' : '3-strand' },
  }))
}

/** The parts that rules and crabs care about, one list of choices each, in the order in which they are tried. */
export const tradeParts: readonly PartOptions[] = [meshes, entrances, gaps, releases, baits, colours, ropes]
