import type { Rope } from '@shared/schema/pot'
import { known, missing, type Reader, type Reading } from '../facts'
import type { Facts, RopeWeight } from '../facts'

const ofRope =
  (read: (rope: Rope, facts: Facts) => Reading): Reader =>
  (facts) =>
    facts.pot.rope ? read(facts.pot.rope, facts) : missing('the rope')

const ofWeight =
  (read: (weight: RopeWeight) => Reading): Reader =>
  ({ weight }) => {
    if (!weight) throw new Error('a rope weight quantity was read outside a rope weight check')
    return read(weight)
  }

const sinks = (rope: Rope) => rope.material !== 'PP' && rope.material !== 'PE'

// Lead weighs 0.91 of its mass in sea water; PP and PE rope of d mm lifts up to about 0.065·d² g/m
// (30 g/m at 8 mm, 14 % of it): Prado & Dremiere, Fisherman's Workbook, FAO 1990.
const LEAD_IN_WATER = 0.91
const LIFT_GRAMS_PER_MM2 = 0.065

/**
 * Rope that can lie on the surface in slack water.
 *
 * Rope that sinks has none. Floating rope rises straight from the pot; what is left over lies on the surface, unless
 * a weight hung d below the float holds the bight under, which it does for L ≤ D + 2d. So L − D − 2d is left, with
 * d = 0 where the weight is lighter in water than the lift of the rope above it.
 *
 * @param rope   length [m], diameter [mm], weights
 * @param depthM depth D at low water [m]
 * @returns length [m], ≥ 0
 * @source hydrostatics of a buoyant line, still water
 */
function floatingLengthM(rope: Rope, depthM: number): number {
  const holding = (rope.weights ?? []).filter(
    (weight) =>
      weight.massKg * 1000 * LEAD_IN_WATER >= LIFT_GRAMS_PER_MM2 * rope.diameterMm ** 2 * weight.belowFloatM,
  )
  const heldDownM = Math.max(0, ...holding.map((weight) => weight.belowFloatM))
  return Math.max(0, rope.lengthM - depthM - 2 * heldDownM)
}

/** What is known of floating rope: nothing without the depth; with no word on weights, at least no slack. */
function floating(rope: Rope, depthM: number | undefined, read: (lengthM: number) => Reading): Reading {
  if (sinks(rope)) return read(0)
  if (depthM === undefined) return missing('the depth, to know how much of this floating rope is slack')
  const lengthM = floatingLengthM(rope, depthM)
  return lengthM > 0 && rope.weights === undefined
    ? missing('whether a weight hangs on the floating rope')
    : read(lengthM)
}

export const ropeReaders = {
  'rope.diameter': ofRope((rope) => known(rope.diameterMm)),
  'rope.length': ofRope((rope) => known(rope.lengthM * 1000)),
  'rope.sinks': ofRope((rope) => known(sinks(rope))),
  'rope.kept-under': ofRope((rope, { water }) =>
    floating(rope, water?.depthM, (lengthM) => known(lengthM === 0)),
  ),
  'rope.floating-length': ofRope((rope, { water }) =>
    floating(rope, water?.depthM, (lengthM) => known(lengthM * 1000)),
  ),
  'rope-weight.mass': ofWeight((weight) => known(weight.massKg * 1000)),
  'rope-weight.below-float': ofWeight((weight) => known(weight.belowFloatM * 1000)),
} satisfies Record<string, Reader>
