import type { CurrentProfile } from './profile'
import { roughnessWithin, speedAt } from './speed'

/** Mean square of the speed over a stretch of height, and the height at which its drag acts. */
export interface MeanSquare {
  /** Mean of u² [m²/s²]. */
  readonly meanSquare: number
  /** Height of the resultant of u² above the bed [m]. */
  readonly centreM: number
}

/**
 * Mean square of the speed over a panel standing on the bed, seventh-root profile.
 *
 * <u²> = u_s² (7/9) (p/h)^(2/7); its drag acts at (9/16) p.
 *
 * @param surfaceMps surface speed u_s [m/s]
 * @param depthM     depth h [m], > 0
 * @param panelM     height of the panel p [m], 0 to h
 * @returns mean of u² [m²/s²]
 * @throws {RangeError} depth not positive
 * @source integral of the seventh-root profile
 */
export function meanSquareOverPanel(surfaceMps: number, depthM: number, panelM: number): number {
  if (!(depthM > 0)) throw new RangeError(`meanSquareOverPanel: depth ${depthM} m must be positive`)
  return surfaceMps ** 2 * (7 / 9) * (panelM / depthM) ** (2 / 7)
}

/**
 * Mean square of the speed between two heights, and where its drag acts.
 *
 * Seventh-root profile: the integrals of z^(2/7) and z^(9/7) in closed form. Other profiles: Gauss-Legendre on five
 * points. Above the surface the surface speed holds.
 *
 * @param profile shape of the profile, surface speed and depth
 * @param fromM   lower height [m], at least 0
 * @param toM     upper height [m]; the same as the lower gives the speed at that height
 * @returns mean of u² and the height of its resultant
 */
export function meanSquareBetween(profile: CurrentProfile, fromM: number, toM: number): MeanSquare {
  const { depthM, surfaceCurrentMps } = profile
  const height = toM - fromM
  if (height < 1e-9) return { meanSquare: speedAt(profile, toM) ** 2, centreM: toM }
  if (profile.profile === 'uniform' || !(toM <= depthM)) return gaussMean(profile, fromM, toM)
  if (profile.profile === 'log')
    return gaussMean(profile, Math.max(fromM, roughnessWithin(profile)), toM, fromM)
  const area = (7 / 9) * (toM ** (9 / 7) - fromM ** (9 / 7))
  const moment = (7 / 16) * (toM ** (16 / 7) - fromM ** (16 / 7))
  return {
    meanSquare: (surfaceCurrentMps ** 2 * area) / (height * depthM ** (2 / 7)),
    centreM: moment / area,
  }
}

const nodes = [-0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664] as const
const weights = [
  0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189,
] as const

function gaussMean(profile: CurrentProfile, fromM: number, toM: number, wholeFromM = fromM): MeanSquare {
  let sum = 0
  let moment = 0
  for (const [i, node] of nodes.entries()) {
    const z = (fromM + toM) / 2 + (node * (toM - fromM)) / 2
    const square = (weights[i] ?? 0) * speedAt(profile, z) ** 2
    sum += square
    moment += square * z
  }
  const share = Math.max(0, toM - fromM) / (toM - wholeFromM)
  return { meanSquare: (sum / 2) * share, centreM: sum > 0 ? moment / sum : (fromM + toM) / 2 }
}
