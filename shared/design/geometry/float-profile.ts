import type { Float } from '@shared/schema/pot'
import { mm } from '../si'

const arcSteps = 20

/**
 * Outline of a float turned about its upright axis: pairs of radius and height from its middle, bottom to top.
 *
 * Sphere; cylinder with flat ends; bullet: a cylinder with one half-round end, up.
 */
export function floatProfile(float: Float): Float32Array {
  const r = mm(float.diameterMm) / 2
  if (float.shape === 'sphere') return arc(r, -Math.PI / 2, Math.PI / 2, 0)
  const half = mm(float.lengthMm) / 2
  if (float.shape === 'cylinder') return Float32Array.of(0, -half, r, -half, r, half, 0, half)
  const shoulder = Math.max(-half, half - r)
  return Float32Array.of(0, -half, r, -half, ...arc(r, 0, Math.PI / 2, shoulder))
}

function arc(r: number, from: number, to: number, z: number): Float32Array {
  const points = new Float32Array(2 * (arcSteps + 1))
  for (let i = 0; i <= arcSteps; i++) {
    const t = from + ((to - from) * i) / arcSteps
    points[2 * i] = Math.max(0, r * Math.cos(t))
    points[2 * i + 1] = z + r * Math.sin(t)
  }
  return points
}
