import { billOfMaterials } from '@shared/design/bill-of-materials'
import { massProperties } from '@shared/design/mass-properties'
import type { Materials } from '@shared/schema/materials'
import type { Objective } from './gear-search'

/** Everything that is carried to the water: pot, bait, rope and float [kg]. */
export function carriedMass(materials: Materials): Objective {
  return (pot) => {
    const { carriedKg, missing } = massProperties(pot, materials)
    return missing.length > 0 ? undefined : carriedKg
  }
}

/** What the parts cost, by the user's own prices; undefined while any part has none, or where currencies mix. */
export function partsCost(materials: Materials): Objective {
  return (pot) => {
    const bill = billOfMaterials(pot, materials)
    const currencies = new Set(bill.map(({ currency }) => currency))
    if (currencies.size !== 1) return undefined
    let cost = 0
    for (const { quantity, priceEach } of bill) {
      if (priceEach === undefined) return undefined
      cost += quantity * priceEach
    }
    return cost
  }
}
