import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import { massProperties } from './mass-properties'

// What a document may hold [kg].
const [lightestKg, heaviestKg] = [0.05, 200] as const

/**
 * A changed design of a pot that was weighed: the mass from the scales goes up or down by what the change weighs.
 *
 * M' = M + m(changed) - m(pot), m the sum over the parts
 *
 * @param pot       as weighed
 * @param changed   the same pot with something changed
 * @param materials for the parts
 * @returns the changed design; as it is where the pot was not weighed
 * @source difference of the sums over the parts
 */
export function reweighed(pot: Pot, changed: Pot, materials: Materials): Pot {
  if (pot.measuredMassKg === undefined) return changed
  const partsKg = (design: Pot) => massProperties(design, materials).computedMassKg
  const massKg = pot.measuredMassKg + partsKg(changed) - partsKg(pot)
  return { ...changed, measuredMassKg: Math.min(heaviestKg, Math.max(lightestKg, massKg)) }
}
