import { seaWaterDensity } from '@shared/physics/constants'
import { sinking, type Sinking } from '@shared/physics/lifting/sinking'
import { screenCoefficient } from '@shared/physics/netting/screen'
import { lolandWake } from '@shared/physics/netting/wake'
import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import { footLengthM, frameMembers } from './frame-members'
import { massProperties, type MassProperties } from './mass-properties'
import { hasTopNetting } from './netting-panels'
import { baseArea, shapeOf, topArea, type PotShape } from './shape'
import { mm } from './si'
import { nettingSolidity } from './solidity'

/** One piece of the pot that meets the water from above or below, with its drag area and height. */
export interface PlanPiece {
  readonly dragAreaM2: number
  readonly heightM: number
}

// A moderate speed for the twine's Reynolds number; the default screen model does not depend on it.
const plainSpeed = { speedMps: 0.7, viscosity: 1.35e-6 } as const

/** What the drag of a pot moving up or down is reckoned with. */
export interface PlanFlow {
  /** Factor on the twine's diameter, 1 clean. */
  readonly foulingTwineFactor: number
  /** Times by which growth multiplies the drag of the netting, 1 clean. */
  readonly growthDrag: number
  readonly barCd: number
  readonly wakeFactor: number
  /** Most that netting can have, closed with weed or mud. */
  readonly closedBaseCd: number
}

const cleanPot: PlanFlow = {
  foulingTwineFactor: 1,
  growthDrag: 1,
  barCd: 1.2,
  wakeFactor: 0.46,
  closedBaseCd: 1.1,
}

/**
 * Drag areas of a pot that moves straight up or down: base and top netting, the one behind the other slowed by
 * its wake, and the bars that lie level.
 *
 * Σ Cd A; netting face-on by the default screen model, at most 1.1 on its outline where it is closed; the second panel
 * with r² = (1 - 0.46 Cd)²; bars 1.2.
 *
 * @param flow growth and coefficients; those of a clean pot where left out
 * @returns pieces with their heights above the base [m²], [m]
 * @source panel model of Aarsnes, Rudi & Loland 1990; wake Loland 1991 (from memory); closed base by judgement
 */
export function planDrag(pot: Pot, shape: PotShape, flow: PlanFlow = cleanPot): PlanPiece[] {
  const pieces: PlanPiece[] = []
  if (pot.netting) {
    const solidity = nettingSolidity(pot.netting, flow.foulingTwineFactor)
    const twineDiameterM = mm(pot.netting.twineDiameterMm) * flow.foulingTwineFactor
    const open = screenCoefficient('aarsnes', { solidity, twineDiameterM, ...plainSpeed }, 0)
    const cd = Math.min(open.cd * flow.growthDrag, flow.closedBaseCd)
    pieces.push({ dragAreaM2: cd * baseArea(shape), heightM: 0 })
    if (hasTopNetting(pot)) {
      const slowed = lolandWake(cd, flow.wakeFactor) ** 2
      pieces.push({ dragAreaM2: cd * slowed * topArea(shape), heightM: shape.heightM })
    }
  }
  for (const member of frameMembers(pot, shape)) {
    if (member.role === 'strut') continue
    const outer = member.diameterM + 2 * member.wrapM
    for (const heightM of member.heightsM)
      pieces.push({ dragAreaM2: flow.barCd * outer * member.pieceLengthM, heightM })
  }
  return pieces
}

/**
 * Whether a pot dropped at the surface lands, and stays, base down.
 *
 * @param waterDensity [kg/m³]
 * @param flow growth and coefficients; those of a clean pot where left out
 * @returns speed and righting arm; undefined where the weight cannot be told
 */
export function landing(
  pot: Pot,
  materials: Materials,
  mass: MassProperties = massProperties(pot, materials),
  waterDensity = seaWaterDensity,
  flow: PlanFlow = cleanPot,
): Sinking | undefined {
  if (mass.missing.length > 0 || mass.onBottomMassKg <= 0) return undefined
  const foot = pot.body.feet > 0 ? footLengthM : 0
  return sinking({
    massKg: mass.onBottomMassKg,
    centreOfGravityM: mass.centreOfGravity[2] + foot,
    displacedM3: mass.volumeM3,
    centreOfBuoyancyM: mass.centreOfBuoyancy[2] + foot,
    planDrag: planDrag(pot, shapeOf(pot.body), flow).map((piece) => ({
      ...piece,
      heightM: piece.heightM + foot,
    })),
    waterDensity,
  })
}
