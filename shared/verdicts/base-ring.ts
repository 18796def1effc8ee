import { frameMembers, type Member } from '@shared/design/frame-members'
import { reweighed } from '@shared/design/reweighed'
import { barMassPerM, solidById } from '@shared/design/materials/lookup'
import type { Outlook } from '@shared/physics/coefficients'
import { standing } from '@shared/physics/holding/standing-pot'
import { steelDensity } from '@shared/physics/material/bar-mass'
import type { Pot } from '@shared/schema/pot'
import type { Bottom } from '@shared/schema/water'
import { prepare, standingIn, type Prepared } from './prepared'
import { thickerRing } from './single-changes'

/** The base ring as it is cut; undefined without one. */
export function baseRing({ input, shape }: Pick<Prepared, 'input' | 'shape'>): Member | undefined {
  return frameMembers(input.pot, shape).find((member) => member.role === 'base-ring')
}

/** Density of the base ring's metal; steel where there is no ring to go by [kg/m³]. */
export function ringDensity(prepared: Prepared): number {
  const ring = baseRing(prepared)
  return (ring && solidById(prepared.input.materials, ring.material)?.densityKgM3) ?? steelDensity
}

// Beyond this no weight on the base is a sensible answer.
const heaviestKg = 60

/** The water and the outlook that a heavier base has to hold in. */
export interface Wanted {
  readonly outlook: Exclude<Outlook, 'hopeful'>
  readonly depthM: number
  readonly currentMps: number
  readonly bottom: Bottom
}

/**
 * " A base ring of 14 mm bar, 1.6 kg heavier, would hold.": the next bar as sold that does, its own drag counted; a
 * weight on the base where no bar does. Empty where the pot holds as it is.
 *
 * @param addedKg mass to add low on the pot as it is [kg]; undefined where none helps
 */
export function ringAdvice(prepared: Prepared, addedKg: number | undefined, wanted: Wanted): string {
  if (addedKg === undefined || addedKg <= 0.005) return ''
  const { words } = prepared
  const would = wanted.outlook === 'cautious' ? 'would make sure of it' : 'would hold'
  const { pot: now, materials } = prepared.input
  const bar = thickerRing(now).variants.find(
    ({ pot, to }) =>
      ringGain(prepared, to) >= addedKg && holds(prepared, reweighed(now, pot, materials), wanted),
  )
  if (bar) {
    const heavierKg = ringGain(prepared, bar.to)
    return ` A base ring of ${words.nominal(bar.to)} bar, ${words.with(heavierKg, 'kg')} heavier, ${would}.`
  }
  if (addedKg > heaviestKg) return ' No weight that one would put on the base would hold it.'
  return ` About ${words.atLeast(addedKg, 'kg')} more ballast on the base ${would}.`
}

/** What the base ring gains by another bar [kg]. */
function ringGain(prepared: Prepared, barMm: number): number {
  const ring = baseRing(prepared)
  const massOf = (mm: number) =>
    (ring && barMassPerM(prepared.input.materials, ring.material, mm)) ?? Number.NaN
  return ring ? (massOf(barMm) - massOf(ring.diameterM * 1000)) * ring.pieceLengthM * ring.count : Number.NaN
}

function holds(prepared: Prepared, pot: Pot, { outlook, depthM, currentMps, bottom }: Wanted): boolean {
  const changed = prepare({ ...prepared.input, pot })
  const { slideFactor, tipFactor } = standing(
    standingIn(changed, outlook, depthM, currentMps, bottom),
    'rough',
  )
  return Math.min(slideFactor, tipFactor) >= 1
}
