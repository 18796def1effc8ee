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
const barCd = 1.2

/**
 * Drag areas of a pot that moves straight up or down: base and top netting, the one behind the other slowed by
 * its wake, and the bars that lie level.
 *
 * Σ Cd A; netting face-on by the default screen model, the second panel with r² = (1 - 0.46 Cd)²; bars 1.2.
 *
 * @param growth factor on the twine's diameter, 1 clean
 * @returns pieces with their heights above the base [m²], [m]
 * @source panel model of Aarsnes, Rudi & Loland 1990; wake Loland 1991 (from memory)
 */
export function planDrag(pot: Pot, shape: PotShape, growth = 1): PlanPiece[] {
  const pieces: PlanPiece[] = []
  if (pot.netting) {
    const solidity = nettingSolidity(pot.netting, growth)
    const twineDiameterM = mm(pot.netting.twineDiameterMm) * growth
    const { cd } = screenCoefficient('aarsnes', { solidity, twineDiameterM, ...plainSpeed }, 0)
    pieces.push({ dragAreaM2: cd * baseArea(shape), heightM: 0 })
    if (hasTopNetting(pot)) {
      const slowed = lolandWake(cd) ** 2
      pieces.push({ dragAreaM2: cd * slowed * topArea(shape), heightM: shape.heightM })
    }
  }
  for (const member of frameMembers(pot, shape)) {
    if (member.role === 'strut') continue
    const outer = member.diameterM + 2 * member.wrapM
    for (const heightM of member.heightsM)
      pieces.push({ dragAreaM2: barCd * outer * member.pieceLengthM, heightM })
  }
  return pieces
}

/**
 * Whether a pot dropped at the surface lands, and stays, base down.
 *
 * @param waterDensity [kg/m³]
 * @returns speed and righting arm; undefined where the weight cannot be told
 */
export function landing(
  pot: Pot,
  materials: Materials,
  mass: MassProperties = massProperties(pot, materials),
  waterDensity = seaWaterDensity,
): Sinking | undefined {
  if (mass.missing.length > 0 || mass.onBottomMassKg <= 0) return undefined
  const foot = pot.body.feet > 0 ? footLengthM : 0
  return sinking({
    massKg: mass.onBottomMassKg,
    centreOfGravityM: mass.centreOfGravity[2] + foot,
    displacedM3: mass.volumeM3,
    centreOfBuoyancyM: mass.centreOfBuoyancy[2] + foot,
    planDrag: planDrag(pot, shapeOf(pot.body)).map((piece) => ({ ...piece, heightM: piece.heightM + foot })),
    waterDensity,
  })
}
