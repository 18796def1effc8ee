import { powerLawExponent } from '@shared/physics/constants'
import { roughnessWithin } from '@shared/physics/current/speed'
import type { LineProblem } from './problem'

/**
 * How load and position change along the rope, per metre from the float down.
 *
 * f_n = ½ρ Cdn d |U_n| U_n with U_n = U - (U·t) t, f_t = ½ρ Cdt d |U·t| (U·t) t; the drag carried so far grows by
 * f, and the position moves against the pull, dr/ds = -T/|T|.
 *
 * The speed is written out here rather than taken from `speedAt`: this is the innermost step of every line, and the
 * seventh root by logarithm takes half the time of a power.
 *
 * @source independence principle; Hoerner, Fluid-Dynamic Drag, 1965
 */
export class RopeSlope {
  /** Outcome of the last `at`. */
  dragX = 0
  dragZ = 0
  x = 0
  z = 0

  readonly #across: number
  readonly #along: number
  readonly #surfaceMps: number
  readonly #depthM: number
  readonly #kind: LineProblem['profile']
  readonly #roughnessM: number
  readonly #logOfDepth: number

  constructor(problem: LineProblem, surfaceMps: number) {
    const half = 0.5 * problem.waterDensity * problem.ropeDiameterM
    this.#across = half * problem.cdn
    this.#along = half * problem.cdt
    this.#surfaceMps = surfaceMps
    this.#depthM = problem.depthM
    this.#kind = problem.profile
    this.#roughnessM = roughnessWithin(problem)
    this.#logOfDepth = Math.log(this.#depthM / this.#roughnessM)
  }

  speed(zM: number): number {
    if (this.#kind === 'uniform' || zM >= this.#depthM) return this.#surfaceMps
    if (this.#kind === 'power')
      return zM > 0 ? this.#surfaceMps * Math.exp(powerLawExponent * Math.log(zM / this.#depthM)) : 0
    return zM > this.#roughnessM ? (this.#surfaceMps * Math.log(zM / this.#roughnessM)) / this.#logOfDepth : 0
  }

  /** Slopes where the pull is (pullX, pullZ) at a height; left in the fields above. */
  at(pullX: number, pullZ: number, zM: number): void {
    const tension = Math.max(Math.sqrt(pullX * pullX + pullZ * pullZ), Number.MIN_VALUE)
    const ex = pullX / tension
    const ez = pullZ / tension
    const u = this.speed(zM)
    const along = u * ex
    const across = this.#across * u * Math.abs(ez)
    const drag = this.#along * Math.abs(along) * along
    this.dragX = across * (u - along * ex) + drag * ex
    this.dragZ = (drag - across * along) * ez
    this.x = -ex
    this.z = -ez
  }

  /** Drag per metre of rope lying on the surface along the current [N/m]. */
  surfaceDrag(): number {
    return this.#along * this.#surfaceMps ** 2
  }
}
