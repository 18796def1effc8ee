import type { BaitHolderRow, Materials, RopeRow, Solid } from '@shared/schema/materials'
import type { Bait, Netting, Release, Rope } from '@shared/schema/pot'
import { betweenRows } from './between-rows'

/** Density of a solid by its id; undefined where the tables do not know it, so that nothing is guessed. */
export function solidById(materials: Materials, id: string): Solid | undefined {
  return materials.solids.find((solid) => solid.id === id)
}

/**
 * Mass of a round bar per metre, coating included.
 *
 * m = table, else ρ π d²/4; plus π d times the coating per square metre.
 *
 * @param diameterMm bar diameter [mm], > 0
 * @returns mass [kg/m], or undefined for an unknown material
 * @source printed bar tables at 7850 kg/m3; hot-dip zinc 0.5-0.8 kg/m2
 */
export function barMassPerM(
  materials: Materials,
  materialId: string,
  diameterMm: number,
): number | undefined {
  const solid = solidById(materials, materialId)
  if (!solid) return undefined
  const core = solid.core ?? solid.id
  const printed =
    materials.bars.find((row) => row.material === solid.id && row.diameterMm === diameterMm) ??
    materials.bars.find((row) => row.material === core && row.diameterMm === diameterMm)
  const d = diameterMm / 1000
  const bare = printed?.massKgPerM ?? (solid.densityKgM3 * Math.PI * d * d) / 4
  return bare + Math.PI * d * (solid.coatingKgM2 ?? 0)
}

/** What a rope weighs and bears, from the three-strand tables; undefined for a material without rows. */
export interface RopeProperties {
  readonly massKgPerM: number
  readonly breakingN: number
  readonly densityKgM3: number
  readonly source: string
  readonly confidence: RopeRow['confidence']
}

/**
 * Mass and breaking strength of a rope of any diameter, read between the rows of its material.
 *
 * @param rope material and diameter [mm]; the construction is not told apart by the tables
 * @returns mass [kg/m], breaking strength of new rope [N], density [kg/m3]
 * @source rope tables in the materials, each row with its own
 */
export function ropeProperties(
  materials: Materials,
  rope: Pick<Rope, 'material' | 'diameterMm'>,
): RopeProperties | undefined {
  const rows = materials.ropes.filter((row) => row.material === rope.material)
  const mass = betweenRows(rows, rope.diameterMm, (row) => row.massKgPer100M / 100)
  const breaking = betweenRows(rows, rope.diameterMm, (row) => row.breakingKn * 1000)
  const density = solidById(materials, rope.material.toLowerCase())?.densityKgM3
  if (mass === undefined || breaking === undefined || density === undefined) return undefined
  const nearest = rows.reduce((best, row) =>
    Math.abs(row.diameterMm - rope.diameterMm) < Math.abs(best.diameterMm - rope.diameterMm) ? row : best,
  )
  const { source, confidence } = nearest
  return { massKgPerM: mass, breakingN: breaking, densityKgM3: density, source, confidence }
}

/** Mass of one metre of netting twine or wire [kg/m] and its density [kg/m3]. */
export function twineProperties(
  materials: Materials,
  netting: Pick<Netting, 'material' | 'twineDiameterMm'>,
): { massKgPerM: number; densityKgM3: number } | undefined {
  const density = solidById(materials, netting.material.toLowerCase())?.densityKgM3
  if (density === undefined) return undefined
  const rows = materials.twines.filter((row) => row.material === netting.material)
  const d = netting.twineDiameterMm / 1000
  const mass =
    betweenRows(rows, netting.twineDiameterMm, (row) => row.rtex * 1e-6) ?? (density * Math.PI * d * d) / 4
  return { massKgPerM: mass, densityKgM3: density }
}

/** Mass of one metre of release cord [kg/m], where material and diameter are given. */
export function cordMassPerM(materials: Materials, release: Release): number | undefined {
  if (release.material === undefined || release.diameterMm === undefined) return undefined
  const rows = materials.cords.filter((row) => row.material === release.material)
  return betweenRows(rows, release.diameterMm, (row) => row.massKgPer100M / 100)
}

/** The row of a bait holder; a user's own row of the same kind comes first. */
export function baitHolderRow(materials: Materials, bait: Pick<Bait, 'holder'>): BaitHolderRow | undefined {
  const rows = materials.baitHolders.filter((row) => row.holder === bait.holder)
  return rows.find((row) => row.own) ?? rows[0]
}
