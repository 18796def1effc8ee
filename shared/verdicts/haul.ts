import { planDrag } from '@shared/design/plan-drag'
import { mm } from '@shared/design/si'
import type { Outlook } from '@shared/physics/coefficients'
import { liftGuideline } from '@shared/physics/lifting/guideline'
import { haulLoads, type HaulLoads, type WholeHaul } from '@shared/physics/lifting/peak'
import { ropeSafeLoad } from '@shared/physics/rope/strength'
import { ropeWetWeight } from '@shared/physics/rope/weight'
import { unbrokenHeight } from '@shared/physics/waves/orbital'
import type { Conditions } from '@shared/tides/conditions'
import { growthDrag, type Prepared } from './prepared'

/** Loads of one haul, with one outlook. */
export interface Haul {
  readonly loads: HaulLoads
  /** Too heavy for one person over the side, so taken as hauled by a hauler. */
  readonly byHauler: boolean
  /** What a person carries over the side, without jerks [kg]. */
  readonly carriedKg: number
  readonly ropeSafeN: number | undefined
}

/** The most advised for one person, close to the body at the height of the knuckles [kg]. */
export const advisedKg = liftGuideline('men', 'knuckle', 'close to body')

/**
 * A haul from the bed to the rail, by hand or, where the pot is too heavy for one person, by a hauler.
 *
 * @returns loads at each stage, what comes over the side, and what the rope can safely take
 * @source shared/physics/lifting/peak, shared/physics/rope/strength
 */
export function haulOf(prepared: Prepared, outlook: Outlook): Haul {
  const { input, mass, conditions, rope, shape, sets, waterDensity } = prepared
  const set = sets[outlook]
  const potKg = mass.dryMassKg + mass.baitKg
  const byHauler = potKg + mass.catchKg + sets.middle.drainedWater > advisedKg
  const isSoft = conditions?.bottom === 'mud' || conditions?.bottom === 'silt'
  const flow = { ...set, growthDrag: growthDrag(prepared) }
  return {
    loads: haulLoads({
      wetWeightN: Math.max(0, prepared.wetWeightN),
      potKg,
      catchKg: mass.catchKg,
      drainedWaterKg: set.drainedWater,
      planDragAreaM2: planDrag(input.pot, shape, flow).reduce((sum, piece) => sum + piece.dragAreaM2, 0),
      haulMps: byHauler ? set.haulerSpeed : set.handHaulSpeed,
      ...wavesAtBoat(conditions),
      depthM: conditions?.depthHighM ?? input.pot.rope?.lengthM ?? 0,
      ropeWetWeightNpm: rope
        ? Math.max(0, ropeWetWeight(rope.massKgPerM, rope.densityKgM3, waterDensity))
        : 0,
      ropeDiameterM: mm(input.pot.rope?.diameterMm ?? 0),
      waterDensity,
      jerk: set.jerk,
      breakout: isSoft ? set.mudBreakout : 1,
    }),
    byHauler,
    carriedKg: potKg + mass.catchKg + set.drainedWater,
    ropeSafeN: safeLoad(prepared, outlook),
  }
}

/** The waves that lift the boat, no higher than they stand. */
function wavesAtBoat(conditions: Conditions | undefined): Pick<WholeHaul, 'waves'> {
  const waves = conditions?.waves
  if (!waves || !(conditions.depthHighM > 0)) return {}
  return { waves: { ...waves, heightM: unbrokenHeight(waves, conditions.depthHighM) } }
}

function safeLoad({ input, rope, sets }: Prepared, outlook: Outlook): number | undefined {
  if (!rope || !input.pot.rope) return undefined
  const set = sets[outlook]
  return ropeSafeLoad(rope.breakingN, set.ropeSafety, {
    knot: set.knotStrength,
    age: input.wear?.ropeStrengthLeft ?? 1,
    wet: input.pot.rope.material === 'PA' ? set.wetNylonStrength : 1,
  })
}
