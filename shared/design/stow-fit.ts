import type { FoldedSize } from './folded-size'

/** A space for gear, in metres and kilograms. */
export interface StowSpace {
  readonly lengthM: number
  readonly widthM: number
  readonly heightM: number
  readonly maxKg: number
}

export interface StowFit {
  /** How many fit by size, stacked flat in the better direction, or stood on edge where that holds more. */
  readonly bySize: number
  /** How many the load allows. */
  readonly byLoad: number
  readonly count: number
}

/**
 * How many pots a space holds.
 *
 * Counts a plain grid for each of the three ways to lay the pot's height; the best of the three, and no more than
 * the load allows.
 *
 * @param size   one pot as carried [m]
 * @param massKg what is carried for one pot [kg], > 0
 * @returns whole pots
 * @source box packing in rows; a tighter nesting may hold more
 */
export function stowFit(size: FoldedSize, massKg: number, space: StowSpace): StowFit {
  const sides = [space.lengthM, space.widthM, space.heightM]
  let bySize = 0
  for (const [a, b, c] of orders) {
    const grid = fits(sides[a], size.lengthM) * fits(sides[b], size.widthM) * fits(sides[c], size.heightM)
    bySize = Math.max(bySize, grid)
  }
  const byLoad = massKg > 0 ? Math.floor(space.maxKg / massKg + 1e-9) : bySize
  return { bySize, byLoad, count: Math.min(bySize, byLoad) }
}

const orders = [
  [0, 1, 2],
  [1, 0, 2],
  [0, 2, 1],
  [2, 0, 1],
  [1, 2, 0],
  [2, 1, 0],
] as const

const fits = (space: number | undefined, size: number) => Math.floor((space ?? 0) / size + 1e-9)
