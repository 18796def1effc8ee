import type { Float, Rope } from '@shared/schema/pot'

const SEA_WATER_KG_PER_L = 1.025

// Three-strand rope: mass [g/m] over diameter² [mm²], and the share of it that weighs in sea water.
// Prado & Dremiere, Fisherman's Workbook, FAO 1990 (8 mm: PA 42, PES 51 g/m).
const sinkingRope = { PA: { gramsPerMm2: 0.656, wetShare: 0.1 }, PES: { gramsPerMm2: 0.797, wetShare: 0.26 } }

/** Volume inside a float's outer faces [L]: a sphere, or a cylinder of its diameter and length. */
export function floatVolumeL(float: Float): number {
  const diameter = float.diameterMm / 100
  if (float.shape === 'sphere') return (Math.PI * diameter ** 3) / 6
  return (Math.PI * diameter ** 2 * (float.lengthMm / 100)) / 4
}

/**
 * Mass that hangs from the float in still water, besides the float's own: the rope's weights in full, and rope
 * that sinks over the length that can hang.
 *
 * @param rope   the rope
 * @param depthM depth of the water [m]; without it the whole rope is taken to hang
 * @returns [kg], or undefined for lead-core rope, whose mass depends on its core
 */
export function hungMassKg(rope: Rope, depthM: number | undefined): number | undefined {
  const weights = (rope.weights ?? []).reduce((sum, weight) => sum + weight.massKg, 0)
  if (rope.material === 'lead-core') return undefined
  if (rope.material === 'PP' || rope.material === 'PE') return weights
  const { gramsPerMm2, wetShare } = sinkingRope[rope.material]
  const hangingM = Math.min(rope.lengthM, depthM ?? rope.lengthM)
  return weights + (gramsPerMm2 * rope.diameterMm ** 2 * wetShare * hangingM) / 1000
}

/**
 * Height of a loaded float above still water.
 *
 * The submerged share of the volume is f = (m + load)/(ρ·V). A sphere sinks by x of its diameter where
 * f = 3x² − 2x³, so x = ½ − sin(asin(1 − 2f)/3); a cylinder floats upright on its rope, x = f.
 *
 * @param float  the float
 * @param loadKg mass hanging from it, weighed in water [kg], ≥ 0
 * @returns freeboard [mm]; 0 where the float cannot carry the load
 * @source buoyancy of a spherical cap, V = πh²(3r − h)/3
 */
export function freeboardMm(float: Float, loadKg: number): number {
  const share = (float.massKg + loadKg) / (SEA_WATER_KG_PER_L * floatVolumeL(float))
  if (share >= 1) return 0
  if (float.shape !== 'sphere') return float.lengthMm * (1 - share)
  const sunk = 0.5 - Math.sin(Math.asin(1 - 2 * share) / 3)
  return float.diameterMm * (1 - sunk)
}
