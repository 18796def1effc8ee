import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import { ropeProperties, solidById } from './materials/lookup'
import { baitPlace, partMasses, type PartMass } from './part-masses'
import { shapeOf } from './shape'

export interface MassProperties {
  readonly parts: readonly PartMass[]
  /** The pot without rope, float, bait and catch [kg], as computed from its parts. */
  readonly computedMassKg: number
  /** The same, by the scales where the design says so. */
  readonly dryMassKg: number
  readonly measured: boolean
  /** Pot with bait: mass [kg], displaced volume [m3]. */
  readonly onBottomMassKg: number
  readonly volumeM3: number
  readonly baitKg: number
  readonly catchKg: number
  readonly ropeKg: number | undefined
  readonly floatKg: number | undefined
  /** Everything that is carried to the water: pot, bait, rope, its weights and float [kg]. */
  readonly carriedKg: number
  /** Pot with bait, no catch; from the centre of the base [m]. */
  readonly centreOfGravity: readonly [number, number, number]
  readonly centreOfBuoyancy: readonly [number, number, number]
  /** What is not given, in the trade's words, so that the weight cannot be told; empty when it can. */
  readonly missing: readonly string[]
  /** Paths of materials that the tables do not know. */
  readonly unknownMaterials: readonly string[]
}

/**
 * Mass, volume and centres of a pot from its parts.
 *
 * M = Σ mᵢ, V = Σ mᵢ/ρᵢ, centre of gravity Σ mᵢ rᵢ / M, centre of buoyancy Σ Vᵢ rᵢ / V. A mass from the scales
 * replaces the sum; masses and volumes of all parts are then scaled by the same share.
 *
 * @param pot       the design
 * @param materials tables of densities, bars, rope, twine and holders
 * @returns masses [kg], volumes [m3], centres [m]; `missing` is empty when the weight can be told
 * @source sum over the parts; densities and tables in the materials, each with its own source
 */
export function massProperties(pot: Pot, materials: Materials): MassProperties {
  const shape = shapeOf(pot.body)
  const { parts: computed, unknown } = partMasses(pot, materials, shape)
  const computedMassKg = total(computed, (part) => part.massKg)
  const share =
    pot.measuredMassKg !== undefined && computedMassKg > 0 ? pot.measuredMassKg / computedMassKg : 1
  const parts = computed.map((part) => ({
    ...part,
    massKg: part.massKg * share,
    volumeM3: part.volumeM3 * share,
  }))
  const baitKg = pot.bait?.massKg ?? 0
  const bait = baitBody(pot, materials, baitKg)
  const onBottom = bait ? [...parts, bait] : parts
  const rope = pot.rope && ropeProperties(materials, pot.rope)
  const ropeKg =
    pot.rope && rope
      ? rope.massKgPerM * pot.rope.lengthM + total(pot.rope.weights ?? [], (weight) => weight.massKg)
      : undefined
  const floatKg = pot.float?.massKg
  const dryMassKg = pot.measuredMassKg ?? computedMassKg
  return {
    parts: onBottom,
    computedMassKg,
    dryMassKg,
    measured: pot.measuredMassKg !== undefined,
    onBottomMassKg: total(onBottom, (part) => part.massKg),
    volumeM3: total(onBottom, (part) => part.volumeM3),
    baitKg,
    catchKg: pot.catchKg ?? 0,
    ropeKg,
    floatKg,
    carriedKg: dryMassKg + baitKg + (ropeKg ?? 0) + (floatKg ?? 0),
    centreOfGravity: centre(onBottom, (part) => part.massKg),
    centreOfBuoyancy: centre(onBottom, (part) => part.volumeM3),
    missing: missingParts(pot, unknown),
    unknownMaterials: unknown,
  }
}

/**
 * Weight of the pot in water.
 *
 * W = g (M - ρ_w V)
 *
 * @param mass            mass properties of the pot with bait
 * @param waterDensity    density of the water [kg/m3], 990-1030
 * @param gravity         [m/s2]
 * @returns weight [N]; negative for a pot that floats
 * @source Archimedes; the catch is near neutral and not counted
 */
export function submergedWeight(mass: MassProperties, waterDensity: number, gravity: number): number {
  return gravity * (mass.onBottomMassKg - waterDensity * mass.volumeM3)
}

function baitBody(pot: Pot, materials: Materials, massKg: number): PartMass | undefined {
  const density = solidById(materials, 'bait')?.densityKgM3
  if (massKg === 0 || density === undefined) return undefined
  return { part: 'bait', massKg, volumeM3: massKg / density, centre: baitPlace(pot, shapeOf(pot.body)) }
}

function missingParts(pot: Pot, unknown: readonly string[]): string[] {
  const missing: string[] = []
  if (!pot.frame?.length) missing.push('the frame')
  if (!pot.netting) missing.push('the netting')
  if (unknown.length > 0) missing.push(`the density of a material (${unknown.join(', ')})`)
  return missing
}

function total<T>(items: readonly T[], value: (item: T) => number): number {
  return items.reduce((sum, item) => sum + value(item), 0)
}

function centre(
  parts: readonly PartMass[],
  value: (part: PartMass) => number,
): readonly [number, number, number] {
  const whole = total(parts, value)
  if (whole <= 0) return [0, 0, 0]
  return [0, 1, 2].map((axis) => total(parts, (part) => value(part) * (part.centre[axis] ?? 0)) / whole) as [
    number,
    number,
    number,
  ]
}
