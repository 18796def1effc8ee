import type { Pot } from '@shared/schema/pot'

/** A design with one thing changed. */
export interface Variant {
  /** Field that changed, as `frame.0.barDiameterMm`. */
  readonly path: string
  readonly from: number
  readonly to: number
  readonly unit: 'mm' | 'kg' | 'm'
  readonly pot: Pot
}

/** One way to change a design, smallest step first. */
export interface ChangeFamily {
  readonly name: 'ring' | 'ballast' | 'thinner-rope' | 'thicker-rope' | 'longer-rope' | 'float' | 'mesh'
  readonly variants: readonly Variant[]
}

/** Bars as they are sold [mm]. */
export const barSizesMm = [6, 8, 10, 12, 14, 16, 18, 20, 22, 25] as const
// Thinner than the first cuts into the hands.
const ropeSizesMm = [6, 8, 10, 12, 14, 16]
const floatSizesMm = [100, 120, 150, 180, 200, 230, 250, 280, 300, 360, 400]
const meshBarsMm = [20, 25, 30, 35, 40, 45, 50, 60, 75]
const ballastStepsKg = [0.25, 0.5, 1, 1.5, 2, 3, 4, 5, 7.5, 10, 15, 20]
const moreRope = [1.15, 1.3, 1.5, 1.75, 2, 2.5, 3]

/** Next thicker bars for the base ring. */
export function thickerRing(pot: Pot): ChangeFamily {
  const index = (pot.frame ?? []).findIndex((member) => member.role === 'base-ring')
  const from = pot.frame?.[index]?.barDiameterMm ?? Infinity
  return {
    name: 'ring',
    variants: barSizesMm
      .filter((size) => size > from && size < pot.body.heightMm / 2)
      .map((to) => ({
        path: `frame.${index}.barDiameterMm`,
        from,
        to,
        unit: 'mm',
        pot: {
          ...pot,
          frame: (pot.frame ?? []).map((m, i) => (i === index ? { ...m, barDiameterMm: to } : m)),
        },
      })),
  }
}

/** Lead added on the base. */
export function moreBallast(pot: Pot): ChangeFamily {
  const pieces = pot.ballast ?? []
  const from = pieces.reduce((sum, piece) => sum + piece.massKg, 0)
  return {
    name: 'ballast',
    variants: ballastStepsKg.map((added) => ({
      path: `ballast.${pieces.length}`,
      from,
      to: from + added,
      unit: 'kg',
      pot: { ...pot, ballast: [...pieces, { material: 'lead', massKg: added, heightMm: 10 }] },
    })),
  }
}

function ropeOf(pot: Pot, name: 'thinner-rope' | 'thicker-rope', sizes: readonly number[]): ChangeFamily {
  const rope = pot.rope
  if (!rope) return { name, variants: [] }
  return {
    name,
    variants: sizes.map((to) => ({
      path: 'rope.diameterMm',
      from: rope.diameterMm,
      to,
      unit: 'mm',
      pot: { ...pot, rope: { ...rope, diameterMm: to } },
    })),
  }
}

export const thinnerRope = (pot: Pot): ChangeFamily =>
  ropeOf(pot, 'thinner-rope', ropeSizesMm.filter((size) => size < (pot.rope?.diameterMm ?? 0)).reverse())

export const thickerRope = (pot: Pot): ChangeFamily =>
  ropeOf(
    pot,
    'thicker-rope',
    ropeSizesMm.filter((size) => size > (pot.rope?.diameterMm ?? Infinity)),
  )

/** More rope, in whole metres; a longer rope may help the pot or not, so it is solved. */
export function longerRope(pot: Pot): ChangeFamily {
  const rope = pot.rope
  if (!rope) return { name: 'longer-rope', variants: [] }
  const lengths = [...new Set(moreRope.map((factor) => Math.ceil(rope.lengthM * factor)))]
  return {
    name: 'longer-rope',
    variants: lengths
      .filter((to) => to > rope.lengthM && to <= 500)
      .map((to) => ({
        path: 'rope.lengthM',
        from: rope.lengthM,
        to,
        unit: 'm',
        pot: { ...pot, rope: { ...rope, lengthM: to } },
      })),
  }
}

/** A larger float of the same make: mass with the surface of its shell. */
export function largerFloat(pot: Pot): ChangeFamily {
  const float = pot.float
  if (!float) return { name: 'float', variants: [] }
  return {
    name: 'float',
    variants: floatSizesMm
      .filter((size) => size > float.diameterMm)
      .map((to) => {
        const grown = to / float.diameterMm
        const massKg = Math.min(50, float.massKg * grown ** 2)
        const larger =
          float.shape === 'sphere'
            ? { ...float, diameterMm: to, massKg }
            : { ...float, diameterMm: to, lengthMm: Math.min(2000, float.lengthMm * grown), massKg }
        return {
          path: 'float.diameterMm',
          from: float.diameterMm,
          to,
          unit: 'mm',
          pot: { ...pot, float: larger },
        }
      }),
  }
}

export function coarserMesh(pot: Pot): ChangeFamily {
  const netting = pot.netting
  if (!netting) return { name: 'mesh', variants: [] }
  return {
    name: 'mesh',
    variants: meshBarsMm
      .filter((size) => size > netting.barLengthMm)
      .map((to) => ({
        path: 'netting.barLengthMm',
        from: netting.barLengthMm,
        to,
        unit: 'mm',
        pot: { ...pot, netting: { ...netting, barLengthMm: to } },
      })),
  }
}
