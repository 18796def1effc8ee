import { frameMembers, type Member } from '@shared/design/frame-members'
import { barMassPerM, solidById } from '@shared/design/materials/lookup'
import { ringBarDiameter } from '@shared/physics/holding/ring-needed'
import { steelDensity } from '@shared/physics/material/bar-mass'
import type { Prepared } from './prepared'
import { nominal } from './words'

/** The base ring as it is cut; undefined without one. */
export function baseRing({ input, shape }: Pick<Prepared, 'input' | 'shape'>): Member | undefined {
  return frameMembers(input.pot, shape).find((member) => member.role === 'base-ring')
}

/** Density of the base ring's metal; steel where there is no ring to go by [kg/m³]. */
export function ringDensity(prepared: Prepared): number {
  const ring = baseRing(prepared)
  return (ring && solidById(prepared.input.materials, ring.material)?.densityKgM3) ?? steelDensity
}

/** Bars as they are sold [mm]. */
export const barSizesMm = [6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32] as const

// Beyond this no ring is a sensible answer.
const heaviestRingKg = 60

/**
 * "A base ring 1.6 kg heavier would hold (14 mm bar)." Empty where no ring of a sensible mass would.
 *
 * @param addedKg mass to add [kg]
 * @param sure    whether it is the mass for the cautious coefficients
 */
export function ringAdvice(prepared: Prepared, addedKg: number | undefined, sure?: 'sure'): string {
  if (addedKg === undefined || addedKg <= 0.005) return ''
  const { words, input } = prepared
  if (addedKg > heaviestRingKg) return ' No base ring of a sensible weight would hold it.'
  const ring = baseRing(prepared)
  const would = sure ? 'would make sure of it' : 'would hold'
  const bar = ring && barFor(ring, addedKg, prepared)
  const size = bar !== undefined && ring ? `, a ${nominal(words, bar)} bar,` : ''
  return input.pot.frame
    ? ` About ${words.with(addedKg, 'kg')} more in the base ring${size} ${would}.`
    : ` About ${words.with(addedKg, 'kg')} of ballast on the base ${would}.`
}

/** Next bar as sold that carries the ring's mass and the mass to add; undefined beyond the thickest. */
function barFor(ring: Member, addedKg: number, { input }: Prepared): number | undefined {
  const perM = barMassPerM(input.materials, ring.material, ring.diameterM * 1000)
  const density = solidById(input.materials, ring.material)?.densityKgM3
  if (perM === undefined || density === undefined) return undefined
  const each = (perM * ring.pieceLengthM * ring.count + addedKg) / ring.count
  const neededMm = ringBarDiameter(each, ring.pieceLengthM / Math.PI, density) * 1000
  return barSizesMm.find((size) => size >= neededMm - 0.05)
}
