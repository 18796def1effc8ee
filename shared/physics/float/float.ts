import { gravity } from '@shared/physics/constants'
import type { FloatBody } from './float-body'
import { sphereDraft, sphereSideArea } from './sphere'

/**
 * Volume of a float.
 *
 * Sphere πD³/6; cylinder πD²L/4; bullet: a cylinder whose lower end is half a sphere (a bullet shorter than its
 * radius counts as a cylinder).
 *
 * @param body float with sizes [m]
 * @returns volume [m³]; 0 for a lumped float, whose volume is not known
 * @source geometry
 */
export function floatVolume(body: FloatBody): number {
  if (body.shape === 'lumped') return 0
  const radius = body.diameterM / 2
  if (body.shape === 'sphere') return (4 / 3) * Math.PI * radius ** 3
  const missing = hasRoundEnd(body) ? radius / 3 : 0
  return Math.PI * radius ** 2 * (body.lengthM - missing)
}

/**
 * Force with which a float, wholly under, pulls up.
 *
 * B = g (ρ_w V - m)
 *
 * @param body         float with sizes and mass
 * @param waterDensity density of the water [kg/m³]
 * @returns net buoyancy [N]; negative sinks
 * @source Archimedes
 */
export function netBuoyancy(body: FloatBody, waterDensity: number): number {
  if (body.shape === 'lumped') return body.netBuoyancyN
  return gravity * (waterDensity * floatVolume(body) - body.massKg)
}

/**
 * Depth to which a float is immersed under a load.
 *
 * The displaced volume is (m + V/g)/ρ_w; sphere by the spherical cap, cylinder and bullet upright.
 *
 * @param body         float with sizes and mass
 * @param loadN        downward pull on it V [N], at least 0
 * @param waterDensity density of the water [kg/m³]
 * @returns draft [m], at most the height of the float; 0 for a lumped float
 * @source Archimedes
 */
export function floatDraft(body: FloatBody, loadN: number, waterDensity: number): number {
  if (body.shape === 'lumped') return 0
  const displaced = (body.massKg + loadN / gravity) / waterDensity
  const radius = body.diameterM / 2
  if (body.shape === 'sphere') return sphereDraft(radius, displaced)
  const section = Math.PI * radius ** 2
  if (!hasRoundEnd(body)) return Math.min(body.lengthM, displaced / section)
  const end = (2 / 3) * Math.PI * radius ** 3
  if (displaced <= end) return sphereDraft(radius, displaced)
  return Math.min(body.lengthM, radius + (displaced - end) / section)
}

/** Height of a float as it stands in the water [m]. */
export function floatHeight(body: FloatBody): number {
  if (body.shape === 'lumped') return 0
  return body.shape === 'sphere' ? body.diameterM : body.lengthM
}

/**
 * Drag area of a float at the surface under a load.
 *
 * Cd·A of the immersed side; when partly out, Cd rises by cdAwash · 4q(1 - q), q the share of its height immersed, for
 * the waves it makes, so that it joins the drag of the float wholly under.
 *
 * @param body         float with sizes, mass and drag coefficients
 * @param loadN        downward pull on it [N], at least 0
 * @param waterDensity density of the water [kg/m³]
 * @returns drag area [m²]
 * @source immersed area by geometry; the law of the added drag is judgement
 */
export function floatDragArea(body: FloatBody, loadN: number, waterDensity: number): number {
  if (body.shape === 'lumped') return body.dragAreaM2
  const draft = floatDraft(body, loadN, waterDensity)
  const share = Math.min(1, draft / floatHeight(body))
  return (body.cd + 4 * body.cdAwash * share * (1 - share)) * sideArea(body, draft)
}

/** Drag area of a float wholly under [m²]. */
export function sunkDragArea(body: FloatBody): number {
  return body.shape === 'lumped' ? body.dragAreaM2 : body.cd * sideArea(body, floatHeight(body))
}

type SolidFloat = Exclude<FloatBody, { shape: 'lumped' }>

function sideArea(body: SolidFloat, draftM: number): number {
  const radius = body.diameterM / 2
  if (body.shape === 'sphere') return sphereSideArea(radius, draftM)
  if (!hasRoundEnd(body)) return body.diameterM * draftM
  return sphereSideArea(radius, Math.min(draftM, radius)) + body.diameterM * Math.max(0, draftM - radius)
}

function hasRoundEnd(body: SolidFloat): boolean {
  return body.shape === 'bullet' && body.lengthM >= body.diameterM / 2
}
