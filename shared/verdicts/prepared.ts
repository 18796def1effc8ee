import { floatBodyOf } from '@shared/design/float-body-of'
import { flowBodies } from '@shared/design/flow-bodies'
import { massProperties, submergedWeight, type MassProperties } from '@shared/design/mass-properties'
import { ropeProperties, solidById, type RopeProperties } from '@shared/design/materials/lookup'
import { shapeOf, type PotShape } from '@shared/design/shape'
import { mm } from '@shared/design/si'
import { stance, type Stance } from '@shared/design/stance'
import { coefficientSet, outlooks, type CoefficientSet, type Outlook } from '@shared/physics/coefficients'
import { gravity, seaWaterDensity } from '@shared/physics/constants'
import type { StandingPot } from '@shared/physics/holding/standing-pot'
import type { LineProblem } from '@shared/physics/line/line'
import { ropeNormalDrag } from '@shared/physics/rope/drag'
import { ropeWetWeight } from '@shared/physics/rope/weight'
import { seaWaterDensityAt } from '@shared/physics/water/density'
import { bedOrbitalSpeed, unbrokenHeight } from '@shared/physics/waves/orbital'
import type { Bottom } from '@shared/schema/water'
import type { Conditions } from '@shared/tides/conditions'
import type { CheckInput } from './check-input'
import { plainLocale } from '@shared/units/locale'
import { wordsIn, type Words } from './words'

/** What every verdict of one check shares: the pot in SI, and the coefficients of the three outlooks. */
export interface Prepared {
  readonly input: CheckInput
  readonly words: Words
  readonly shape: PotShape
  readonly mass: MassProperties
  readonly stance: Stance
  readonly rope: RopeProperties | undefined
  /** Conditions when they are known. */
  readonly conditions: Conditions | undefined
  readonly waterDensity: number
  readonly wetWeightN: number
  readonly sets: Readonly<Record<Outlook, CoefficientSet>>
}

export function prepare(input: CheckInput): Prepared {
  const { pot, materials } = input
  const shape = shapeOf(pot.body)
  const mass = massProperties(pot, materials)
  const conditions = knownConditions(input.conditions)
  const waterDensity = waterDensityOf(conditions)
  const set = (outlook: Outlook) => coefficientSet(input.coefficients, outlook)
  return {
    input,
    words: wordsIn(input.locale ?? plainLocale),
    shape,
    mass,
    stance: stance(pot, shape, mass),
    rope: pot.rope && ropeProperties(materials, pot.rope),
    conditions,
    waterDensity,
    wetWeightN: submergedWeight(mass, waterDensity, gravity),
    sets: { cautious: set('cautious'), middle: set('middle'), hopeful: set('hopeful') },
  }
}

const knownConditions = (conditions: CheckInput['conditions']): Conditions | undefined =>
  conditions && !('missing' in conditions) ? conditions : undefined

/** Water at the temperature and salinity given; coastal sea water where either is not. */
function waterDensityOf(conditions: Conditions | undefined): number {
  const { temperatureC, salinityPsu } = conditions ?? {}
  return temperatureC === undefined || salinityPsu === undefined
    ? seaWaterDensity
    : seaWaterDensityAt(salinityPsu, temperatureC)
}

/** Times by which growth multiplies the drag of the netting, as wear says. */
export const growthDrag = ({ input }: Prepared): number => input.wear?.foulingFactor ?? 1

/** Rope and float in one water; undefined without rope or float, or for a rope that no table knows. */
export function lineIn(
  prepared: Prepared,
  set: CoefficientSet,
  depthM: number,
  currentMps: number,
): LineProblem | undefined {
  const { pot, materials } = prepared.input
  const { rope, waterDensity, stance } = prepared
  if (!pot.rope || !pot.float || !rope) return undefined
  const lead = solidById(materials, 'lead')?.densityKgM3 ?? Infinity
  return {
    depthM,
    surfaceCurrentMps: currentMps,
    profile: 'power',
    ropeLengthM: pot.rope.lengthM,
    ropeDiameterM: mm(pot.rope.diameterMm),
    ropeWetWeightNpm: ropeWetWeight(rope.massKgPerM, rope.densityKgM3, waterDensity),
    clumps: (pot.rope.weights ?? [])
      .filter((weight) => weight.massKg > 0 && weight.belowFloatM <= (pot.rope?.lengthM ?? 0))
      .map((weight) => ({
        atFromFloatM: weight.belowFloatM,
        wetWeightN: gravity * weight.massKg * (1 - waterDensity / lead),
      })),
    float: floatBodyOf(pot.float, {
      sphere: set.floatCdSphere,
      cylinder: set.floatCdCylinder,
      awash: set.floatCdAwash,
    }),
    cdn: ropeNormalDrag(set.ropeCdn, set.ropeCdnTaut, pot.rope.lengthM, depthM - stance.bridleHeightM),
    cdt: set.ropeCdt,
    waterDensity,
    potHeightM: stance.bridleHeightM,
  }
}

/** The pot on the bed with its rope, in one water with one outlook; tied off, no float pulls on it. */
export function standingIn(
  prepared: Prepared,
  outlook: Outlook,
  depthM: number,
  currentMps: number,
  bottom: Bottom,
): StandingPot {
  const set = prepared.sets[outlook]
  const { input, shape, stance, waterDensity, wetWeightN } = prepared
  const line = input.trip?.tiedOff === true ? undefined : lineIn(prepared, set, depthM, currentMps)
  const waves = wavesAtBed(prepared, set, depthM)
  return {
    bodies: flowBodies(input.pot, input.materials, shape, {
      foulingFactor: set.foulingTwineFactor,
      growthDrag: growthDrag(prepared),
      closedTopLift: set.closedTopLift,
      baseHeightM: stance.baseHeightM,
    }),
    wetWeightN,
    edgeArmM: stance.edgeArmM,
    upliftArmM: stance.upliftArmM,
    bridleHeightM: stance.bridleHeightM,
    bottom,
    current: { profile: 'power', depthM, surfaceCurrentMps: currentMps },
    waterDensity,
    coefficients: set,
    ...(waves && { waves }),
    ...(line && { line }),
  }
}

function wavesAtBed(prepared: Prepared, set: CoefficientSet, depthM: number) {
  const waves = prepared.conditions?.waves
  if (!waves || waves.heightM === 0 || depthM <= 0) return undefined
  const largest = { heightM: waves.heightM * set.largestWave, periodS: waves.periodS }
  const orbitalMps = bedOrbitalSpeed({ ...largest, heightM: unbrokenHeight(largest, depthM) }, depthM)
  return Number.isFinite(orbitalMps) ? { orbitalMps, periodS: waves.periodS } : undefined
}

/** One value for each outlook. */
export function forEachOutlook<T>(value: (outlook: Outlook) => T): Record<Outlook, T> {
  const [cautious, middle, hopeful] = outlooks
  return { cautious: value(cautious), middle: value(middle), hopeful: value(hopeful) }
}
