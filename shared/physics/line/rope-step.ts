import type { RopeSlope } from './rope-slope'

/**
 * One step down the rope at a time: drag carried so far and position, by an embedded Runge-Kutta pair.
 *
 * The stages are written out: loops over a table cost four times as much, and a dragged slider solves thousands.
 *
 * @source J. R. Dormand & P. J. Prince, J. Comput. Appl. Math. 6 (1980) 19-26, pair of orders 5 and 4
 */
export class RopeStep {
  /** State: drag carried from the top [N] and position from the top, z above the bed [m]. */
  dragX = 0
  dragZ = 0
  x = 0
  z = 0

  /** State at the end of the step that was tried. */
  nextDragX = 0
  nextDragZ = 0
  nextX = 0
  nextZ = 0

  /** Pull at the top, clump weights passed so far taken off, and weight per metre. */
  pullX = 0
  lift = 0
  readonly #weight: number
  readonly #slope: RopeSlope
  readonly #perForce: number
  readonly #perLength: number

  // Slopes at the start of the step, and at its end, which start the next one.
  #a1 = 0
  #b1 = 0
  #c1 = 0
  #d1 = 0
  #a7 = 0
  #b7 = 0
  #c7 = 0
  #d7 = 0

  constructor(slope: RopeSlope, wetWeightNpm: number, forceScale: number, lengthScale: number) {
    this.#slope = slope
    this.#weight = wetWeightNpm
    this.#perForce = 1 / forceScale
    this.#perLength = 1 / lengthScale
  }

  start(pullX: number, lift: number, topM: number): void {
    this.pullX = pullX
    this.lift = lift
    this.dragX = this.dragZ = this.x = 0
    this.z = topM
  }

  /** Upward pull at the state. */
  pullZ(s: number): number {
    return this.lift + this.dragZ - this.#weight * s
  }

  /** Upward pull at the end of the step that was tried. */
  nextPullZ(s: number): number {
    return this.lift + this.nextDragZ - this.#weight * s
  }

  /** Takes the slope afresh, at the top and after a clump weight. */
  aim(s: number): void {
    const slope = this.#slope
    slope.at(this.pullX + this.dragX, this.pullZ(s), this.z)
    this.#a1 = slope.dragX
    this.#b1 = slope.dragZ
    this.#c1 = slope.x
    this.#d1 = slope.z
  }

  /** Moves the state to the end of the step that was tried. */
  accept(): void {
    this.dragX = this.nextDragX
    this.dragZ = this.nextDragZ
    this.x = this.nextX
    this.z = this.nextZ
    this.#a1 = this.#a7
    this.#b1 = this.#b7
    this.#c1 = this.#c7
    this.#d1 = this.#d7
  }

  /** Tries a step; returns its error as a share of the loads or of the length, whichever is worse. */
  try(s: number, h: number): number {
    const slope = this.#slope
    const px = this.pullX + this.dragX
    const pz = this.lift + this.dragZ - this.#weight * s
    const w = this.#weight * h
    const z = this.z
    const a1 = this.#a1
    const b1 = this.#b1
    const c1 = this.#c1
    const d1 = this.#d1

    slope.at(px + (h * a1) / 5, pz - w / 5 + (h * b1) / 5, z + (h * d1) / 5)
    const a2 = slope.dragX
    const b2 = slope.dragZ
    const d2 = slope.z

    const h31 = h * (3 / 40)
    const h32 = h * (9 / 40)
    slope.at(px + h31 * a1 + h32 * a2, pz - 0.3 * w + h31 * b1 + h32 * b2, z + h31 * d1 + h32 * d2)
    const a3 = slope.dragX
    const b3 = slope.dragZ
    const c3 = slope.x
    const d3 = slope.z

    const h41 = h * (44 / 45)
    const h42 = h * (-56 / 15)
    const h43 = h * (32 / 9)
    slope.at(
      px + h41 * a1 + h42 * a2 + h43 * a3,
      pz - 0.8 * w + h41 * b1 + h42 * b2 + h43 * b3,
      z + h41 * d1 + h42 * d2 + h43 * d3,
    )
    const a4 = slope.dragX
    const b4 = slope.dragZ
    const c4 = slope.x
    const d4 = slope.z

    const h51 = h * (19372 / 6561)
    const h52 = h * (-25360 / 2187)
    const h53 = h * (64448 / 6561)
    const h54 = h * (-212 / 729)
    slope.at(
      px + h51 * a1 + h52 * a2 + h53 * a3 + h54 * a4,
      pz - (8 / 9) * w + h51 * b1 + h52 * b2 + h53 * b3 + h54 * b4,
      z + h51 * d1 + h52 * d2 + h53 * d3 + h54 * d4,
    )
    const a5 = slope.dragX
    const b5 = slope.dragZ
    const c5 = slope.x
    const d5 = slope.z

    const h61 = h * (9017 / 3168)
    const h62 = h * (-355 / 33)
    const h63 = h * (46732 / 5247)
    const h64 = h * (49 / 176)
    const h65 = h * (-5103 / 18656)
    slope.at(
      px + h61 * a1 + h62 * a2 + h63 * a3 + h64 * a4 + h65 * a5,
      pz - w + h61 * b1 + h62 * b2 + h63 * b3 + h64 * b4 + h65 * b5,
      z + h61 * d1 + h62 * d2 + h63 * d3 + h64 * d4 + h65 * d5,
    )
    const a6 = slope.dragX
    const b6 = slope.dragZ
    const c6 = slope.x
    const d6 = slope.z

    const h1 = h * (35 / 384)
    const h3 = h * (500 / 1113)
    const h4 = h * (125 / 192)
    const h5 = h * (-2187 / 6784)
    const h6 = h * (11 / 84)
    const moreX = h1 * a1 + h3 * a3 + h4 * a4 + h5 * a5 + h6 * a6
    const moreZ = h1 * b1 + h3 * b3 + h4 * b4 + h5 * b5 + h6 * b6
    this.nextDragX = this.dragX + moreX
    this.nextDragZ = this.dragZ + moreZ
    this.nextX = this.x + h1 * c1 + h3 * c3 + h4 * c4 + h5 * c5 + h6 * c6
    this.nextZ = z + h1 * d1 + h3 * d3 + h4 * d4 + h5 * d5 + h6 * d6
    slope.at(px + moreX, pz - w + moreZ, this.nextZ)
    this.#a7 = slope.dragX
    this.#b7 = slope.dragZ
    this.#c7 = slope.x
    this.#d7 = slope.z

    const e1 = h * (71 / 57600)
    const e3 = h * (-71 / 16695)
    const e4 = h * (71 / 1920)
    const e5 = h * (-17253 / 339200)
    const e6 = h * (22 / 525)
    const e7 = h / -40
    const ex = Math.abs(e1 * a1 + e3 * a3 + e4 * a4 + e5 * a5 + e6 * a6 + e7 * this.#a7)
    const ez = Math.abs(e1 * b1 + e3 * b3 + e4 * b4 + e5 * b5 + e6 * b6 + e7 * this.#b7)
    const away = Math.abs(e1 * c1 + e3 * c3 + e4 * c4 + e5 * c5 + e6 * c6 + e7 * this.#c7)
    const down = Math.abs(e1 * d1 + e3 * d3 + e4 * d4 + e5 * d5 + e6 * d6 + e7 * this.#d7)
    return Math.max(Math.max(ex, ez) * this.#perForce, Math.max(away, down) * this.#perLength)
  }
}
