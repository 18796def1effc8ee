import type { Clump, LineProblem } from './problem'
import { RopeSlope } from './rope-slope'
import { RopeStep } from './rope-step'

/** Local error allowed in a step, as a share of the rope's length and of the loads. */
export const fineStep = 4e-9
export const coarseStep = 1e-5
const maxSteps = 600

/** How a rope is hung up: the pull at its top, where the top is, and how much of it hangs. */
export interface Hanging {
  readonly pullXN: number
  readonly pullZN: number
  readonly topM: number
  readonly lengthM: number
  /** Rope between the float and the top of the hanging part. */
  readonly slackM: number
}

/** How closely to follow it. */
export interface Following {
  /** `fineStep` or `coarseStep`. */
  readonly tolerance: number
  /** Stop where the rope comes down to this height. */
  readonly stopAtM?: number
  /** Receives x, z at every step, x from the top, negative up-current; at least 24 steps are then taken. */
  readonly shape?: number[]
}

const stepsInShape = 24

/**
 * A rope followed from its top down: pull and position at every point follow from those at the top.
 *
 * Adaptive steps of order 5 between the clump weights. Where a sinking rope has no upward pull left it lies level
 * from there on: it has come to rest on the bed.
 */
export class HangingRope {
  /** What the last `hang` came to. */
  dragXN = 0
  dragZN = 0
  weightN = 0
  xM = 0
  zM = 0
  hungM = 0
  groundedM = 0
  tensionMaxN = 0
  /** False when the steps ran out. */
  complete = true

  readonly slope: RopeSlope
  readonly #step: RopeStep
  readonly #wetWeight: number
  readonly #clumps: readonly Clump[]
  readonly #bedM: number
  readonly #still: boolean
  readonly #lengthScale: number
  readonly #forceScale: number

  constructor(problem: LineProblem, surfaceMps: number, forceScale: number) {
    this.slope = new RopeSlope(problem, surfaceMps)
    this.#wetWeight = problem.ropeWetWeightNpm
    this.#clumps = [...problem.clumps].sort((a, b) => a.atFromFloatM - b.atFromFloatM)
    this.#bedM = problem.potHeightM
    this.#still = surfaceMps === 0
    this.#lengthScale = problem.ropeLengthM
    this.#forceScale = forceScale
    this.#step = new RopeStep(this.slope, this.#wetWeight, forceScale, this.#lengthScale)
  }

  /** Follows the rope and leaves the outcome in the fields above. */
  hang(how: Hanging, following: Following): void {
    const { shape } = following
    this.#step.start(how.pullXN, how.pullZN, how.topM)
    this.tensionMaxN = Math.hypot(how.pullXN, how.pullZN)
    this.weightN = 0
    this.complete = true
    if (shape) {
      shape.length = 0
      shape.push(0, how.topM)
    }
    let s = 0
    let goesOn = true
    for (const clump of this.#clumps) {
      const at = Math.max(0, clump.atFromFloatM - how.slackM)
      if (!goesOn || at >= how.lengthM) break
      const reached = this.#follow(s, at, following)
      goesOn = reached === at
      s = reached
      if (goesOn) goesOn = this.#passClump(clump, s)
    }
    if (goesOn) s = this.#follow(s, how.lengthM, following)
    this.#finish(s, how.lengthM, following)
  }

  #finish(s: number, lengthM: number, { stopAtM, shape }: Following): void {
    const step = this.#step
    this.hungM = s
    this.weightN += this.#wetWeight * s
    this.groundedM = stopAtM === undefined ? lengthM - s : 0
    this.dragXN = step.dragX
    this.dragZN = step.dragZ
    this.xM = step.x - this.groundedM
    this.zM = step.z
    if (shape && this.groundedM > 0) shape.push(this.xM, this.zM)
  }

  /** Takes the weight's pull off; false when the rope lies level from here on. */
  #passClump(clump: Clump, s: number): boolean {
    const before = this.#step.pullZ(s)
    const rests = before < clump.wetWeightN && (this.#wetWeight >= 0 || this.#step.z <= this.#bedM)
    const carried = rests ? Math.max(0, before) : clump.wetWeightN
    this.#step.lift -= carried
    this.weightN += carried
    this.#noteTension(s)
    return !rests
  }

  /** Follows the rope from one arc length to another; returns how far it hangs. */
  #follow(from: number, to: number, following: Following): number {
    if (to <= from) return from
    return this.#still ? this.#fall(from, to, following) : this.#integrate(from, to, following)
  }

  /** In still water the rope hangs plumb, up or down as the pull goes. */
  #fall(from: number, to: number, { stopAtM = -Infinity, shape }: Following): number {
    const step = this.#step
    const w = this.#wetWeight
    const turn = w === 0 ? Infinity : step.lift / w
    let s = from
    while (s < to) {
      const end = turn > s && turn < to ? turn : to
      const pull = step.lift - (w * (s + end)) / 2
      if (pull <= 0 && w >= 0) return s
      const drop = pull > 0 ? end - s : s - end
      if (step.z - drop <= stopAtM) {
        s += step.z - stopAtM
        step.z = stopAtM
        return s
      }
      step.z -= drop
      s = end
      this.#noteTension(s)
      shape?.push(0, step.z)
    }
    return to
  }

  #integrate(from: number, to: number, following: Following): number {
    const step = this.#step
    const { tolerance, shape, stopAtM } = following
    if (this.#wetWeight >= 0 && step.pullZ(from) <= 0) return from
    const longest = shape ? this.#lengthScale / stepsInShape : to - from
    let h = Math.min(longest, (to - from) / 4)
    let s = from
    step.aim(s)
    for (let count = 0; count < maxSteps; count += 1) {
      const last = s + h >= to * (1 - 1e-12)
      if (last) h = to - s
      const error = step.try(s, h) / tolerance
      if (error > 1) {
        h *= Math.max(0.15, 0.9 * error ** -0.2)
        continue
      }
      const stop = this.#stopWithin(s, h, stopAtM)
      step.accept()
      s = stop === undefined && last ? to : s + (stop ?? h)
      this.#noteTension(s)
      shape?.push(step.x, step.z)
      if (stop !== undefined || last) return s
      h = Math.min(longest, h * Math.min(5, 0.9 * Math.max(error, 1e-10) ** -0.2))
    }
    this.complete = false
    return s
  }

  /** Part of the tried step after which the rope touches down or reaches the height to stop at, tried again. */
  #stopWithin(s: number, h: number, stopAtM: number | undefined): number | undefined {
    if (this.#wetWeight < 0 && stopAtM === undefined) return undefined
    const step = this.#step
    const clear = (pull: number, z: number) =>
      Math.min(
        this.#wetWeight < 0 ? 1 : pull / this.#forceScale,
        stopAtM === undefined ? 1 : (z - stopAtM) / this.#lengthScale,
      )
    let high = h
    let highClear = clear(step.nextPullZ(s + h), step.nextZ)
    if (highClear > 0) return undefined
    let low = 0
    let lowClear = clear(step.pullZ(s), step.z)
    for (let i = 0; i < 40 && highClear < -1e-13 && high - low > 1e-13 * h; i += 1) {
      const share = i % 3 === 2 ? 0.5 : lowClear / (lowClear - highClear)
      const part = low + (high - low) * share
      step.try(s, part)
      const left = clear(step.nextPullZ(s + part), step.nextZ)
      if (left > 0) {
        low = part
        lowClear = left
      } else {
        high = part
        highClear = left
      }
    }
    step.try(s, high)
    return high
  }

  #noteTension(s: number): void {
    const step = this.#step
    const tension = Math.sqrt((step.pullX + step.dragX) ** 2 + step.pullZ(s) ** 2)
    if (tension > this.tensionMaxN) this.tensionMaxN = tension
  }
}
