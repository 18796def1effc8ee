import type { PartKind } from '@shared/schema/gear'
import type { RopeGrade } from './rope'
import type { WearAssumptions } from './assumptions'
import { halvings } from './damage'

/** What a part has been through since it was put in. */
export interface Exposure {
  readonly ageMonths: number
  readonly hauls: number
  readonly immersedDays: number
  /** Days ashore by how the pot was kept. */
  readonly ashoreDays: AshoreDays
}

export type StoragePlace = 'sun' | 'shade' | 'indoors' | 'unstated'
export type AshoreDays = Readonly<Record<StoragePlace, number>>

/** What an inspection found, with what the part had been through by then. */
export interface Inspection {
  readonly at: Exposure
  readonly grade?: RopeGrade
  readonly diameterLossPct?: number
  readonly brokenBars?: number
}

/** A part as the wear models see it. */
export interface PartUse {
  readonly kind: PartKind
  readonly material?: string | undefined
  readonly diameterMm?: number | undefined
  readonly zincUm?: number | undefined
  readonly now: Exposure
  /** Oldest first. */
  readonly inspections: readonly Inspection[]
}

/** The first weeks of a part say little of the months to come: its use so far is spread over a month at least. */
const leastMonths = 1

/**
 * Use a month, from all use so far.
 *
 * rate = use/max(age, 1)
 *
 * @param soFar      hauls, days or halvings so far, ≥ 0
 * @param ageMonths  age of the part [months], ≥ 0
 * @returns use a month
 */
export function perMonthOfUse(soFar: number, ageMonths: number): number {
  return soFar / Math.max(leastMonths, ageMonths)
}

/**
 * Sun that reached a part, from the days ashore and how it was kept [kLy].
 *
 * E = dose a year · Σ days·share/365.25
 */
function sunDose({ ashoreDays }: Exposure, sheet: WearAssumptions): number {
  const days =
    ashoreDays.sun * sheet.sunShareSun.value +
    ashoreDays.shade * sheet.sunShareShade.value +
    ashoreDays.unstated * sheet.sunShareUnknown.value
  return (sheet.sunKlyPerYear.value * days) / 365.25
}

/** Halvings of strength of a fibre part by all that it went through; shares of the sheet's half-lives. */
export function damageOf(part: Pick<PartUse, 'material'>, use: Exposure, sheet: WearAssumptions): number {
  const { halfDoseKly, halfImmersedDays } = fibre(part.material, sheet)
  return halvings({
    doseKly: sunDose(use, sheet),
    halfDoseKly,
    hauls: use.hauls,
    halfHauls: sheet.halfHauls.value,
    immersedDays: use.immersedDays,
    halfImmersedDays,
  })
}

/** Half-lives of a fibre by its trade name; what is not known is taken as stabilised PP. */
function fibre(
  material: string | undefined,
  sheet: WearAssumptions,
): { halfDoseKly: number; halfImmersedDays: number } {
  const name = (material ?? '').toUpperCase()
  if (name.includes('BLACK'))
    return { halfDoseKly: sheet.uvBlack.value, halfImmersedDays: sheet.halfImmersedPe.value }
  if (name.startsWith('PA'))
    return { halfDoseKly: sheet.uvPa.value, halfImmersedDays: sheet.halfImmersedPa.value }
  // Nothing was found on polyester under water; it is taken as PE.
  if (name.startsWith('PES'))
    return { halfDoseKly: sheet.uvPes.value, halfImmersedDays: sheet.halfImmersedPe.value }
  if (name.startsWith('PE'))
    return { halfDoseKly: sheet.uvPe.value, halfImmersedDays: sheet.halfImmersedPe.value }
  return { halfDoseKly: sheet.uvPp.value, halfImmersedDays: sheet.halfImmersedPp.value }
}
