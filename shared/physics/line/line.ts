import { brentRoot, type Root } from '@shared/numerics/brent-root'
import { floatDragArea, netBuoyancy, sunkDragArea } from '@shared/physics/float/float'
import { coarseStep, fineStep, HangingRope, type Following, type Hanging } from './hanging-rope'
import type { LineFailure, LineProblem, LineResult, LineSolution } from './problem'
import { unsolvable } from './unsolvable'

export type { Clump, LineFailure, LineProblem, LineResult, LineSolution } from './problem'

/** Miss of the rope's end, over its length, up to which a solution counts as converged. */
const acceptedMiss = 1e-5

/**
 * Balance of a rope between a pot and its float in a current, in the vertical plane of the current.
 *
 * The rope does not stretch. Followed from the float down (`HangingRope`), its lower end must come out at the pot: a
 * root in one unknown. At the surface that is the buoyancy used V, or, for a floating rope longer than it need be,
 * the length lying on the surface. When V would exceed the float's net buoyancy the float is under: V is the net
 * buoyancy and the unknown is the height of the float. The drag of the float follows its draft.
 *
 * A sinking rope with slack lies level at the height of the bridle from where its upward pull ends; rope on the bed
 * takes no drag and gives no friction.
 *
 * @param problem rope, float, water and the height of the bridle; see `LineProblem`
 * @returns the balance with its residual, or `failed` with the reason; never throws, at most some 160 tries
 * @source two-point boundary problem of an inextensible line with loads by the independence principle; Berteaux,
 *   Buoy Engineering, 1976; Bell 1977, Pacific Marine Science Report 77-12
 */
export function solveLine(problem: LineProblem): LineResult {
  const reason = unsolvable(problem)
  if (reason !== undefined) return failure(reason)
  const balance = new LineBalance(problem)
  return balance.sinksAt(balance.buoyancyN) ? balance.under() : balance.atSurface()
}

export function failure(reason: string, residual = 0, iterations = 0): LineFailure {
  return { state: 'failed', reason, residual, iterations, converged: false }
}

/** One line in one current, and the tries that bring it into balance. */
export class LineBalance {
  readonly problem: LineProblem
  readonly buoyancyN: number
  readonly rope: HangingRope
  readonly #surfaceMps: number
  readonly #forceScale: number
  readonly #shape: number[] = []
  #tries = 0

  constructor(problem: LineProblem) {
    const { waterDensity, ropeLengthM, ropeDiameterM, surfaceCurrentMps } = problem
    this.problem = problem
    this.buoyancyN = netBuoyancy(problem.float, waterDensity)
    const clumps = problem.clumps.reduce((sum, clump) => sum + Math.abs(clump.wetWeightN), 0)
    const weights = Math.abs(problem.ropeWetWeightNpm) * ropeLengthM + clumps
    const area = problem.cdn * ropeDiameterM * ropeLengthM + sunkDragArea(problem.float)
    const drag = 0.5 * waterDensity * area * surfaceCurrentMps ** 2
    // A breath of current only blurs the plumb line; below this share it is left out.
    this.#surfaceMps = drag > 1e-9 * (weights + this.buoyancyN) ? surfaceCurrentMps : 0
    this.#forceScale = weights + drag + 1e-6 * this.buoyancyN
    this.rope = new HangingRope(problem, this.#surfaceMps, this.#forceScale)
  }

  /** Whether the rope asks for more than this upward force of a float at the surface. */
  sinksAt(verticalN: number): boolean {
    const hanging = this.#surfaceHanging(verticalN, 0)
    const rough = this.#miss(hanging, { tolerance: coarseStep })
    const isClear = Math.abs(rough) > 1e-2 * this.problem.ropeLengthM
    return (isClear ? rough : this.#fineMiss(hanging)) > 0
  }

  /** The float at the surface: the buoyancy used, or the rope lying on the surface. */
  atSurface(): LineResult {
    const hanging = (q: number) => this.#hangingFor(q)
    const floats = this.problem.ropeWetWeightNpm < 0 && this.#miss(hanging(0), { tolerance: coarseStep }) < 0
    const found = floats
      ? this.#balance(hanging, -1, 0)
      : this.#balance(hanging, 0, this.#parameterOf(this.buoyancyN))
    return this.#solution(found, hanging, 'surface')
  }

  /** The float drawn under: the height at which its net buoyancy is in balance. */
  under(): LineResult {
    const { potHeightM, depthM } = this.problem
    const hanging = (z: number) => this.#sunkHanging(z)
    return this.#solution(this.#balance(hanging, potHeightM, depthM), hanging, 'under')
  }

  /**
   * The unknown at which the rope's end meets the pot: found on a coarse rope, then brought in on a fine one by the
   * secant; where the secant fails, on the fine rope from the start.
   */
  #balance(hanging: (q: number) => Hanging, from: number, to: number): Balanced {
    const fine = (q: number) => this.#fineMiss(hanging(q))
    const whole = to - from
    if (this.#surfaceMps > 0) {
      const coarse = (q: number) => this.#miss(hanging(q), { tolerance: coarseStep })
      const near = brentRoot(coarse, from, to, { tolerance: 1e-4 * whole })
      const polished = polish(fine, near.root, from, to)
      if (polished) return polished
    }
    return { ...brentRoot(fine, from, to, { tolerance: 1e-13 * whole }), isLast: false }
  }

  /** One unknown for both branches: below 0 the share of rope on the surface, above it the buoyancy used. */
  #hangingFor(q: number): Hanging {
    return q < 0
      ? this.#surfaceHanging(0, -q * this.problem.ropeLengthM)
      : this.#surfaceHanging((this.#forceScale * q) / (1 - q), 0)
  }

  #parameterOf(verticalN: number): number {
    return verticalN / (this.#forceScale + verticalN)
  }

  #surfaceHanging(pullZN: number, slackM: number): Hanging {
    const { float, waterDensity, depthM, ropeLengthM } = this.problem
    const drag = 0.5 * waterDensity * floatDragArea(float, pullZN, waterDensity) * this.#surfaceMps ** 2
    return {
      pullXN: drag + this.rope.slope.surfaceDrag() * slackM,
      pullZN,
      topM: depthM,
      lengthM: ropeLengthM - slackM,
      slackM,
    }
  }

  #sunkHanging(topM: number): Hanging {
    const { float, waterDensity, ropeLengthM } = this.problem
    const speed = this.rope.slope.speed(topM)
    const pullXN = 0.5 * waterDensity * sunkDragArea(float) * speed ** 2
    return { pullXN, pullZN: this.buoyancyN, topM, lengthM: ropeLengthM, slackM: 0 }
  }

  /** The miss on a fine rope, whose shape is kept. */
  #fineMiss(hanging: Hanging): number {
    return this.#miss(hanging, { tolerance: fineStep, shape: this.#shape })
  }

  #miss(hanging: Hanging, following: Following): number {
    this.#tries += 1
    this.rope.hang(hanging, following)
    return this.rope.zM - this.problem.potHeightM
  }

  #solution(found: Balanced, hangingFor: (q: number) => Hanging, state: LineSolution['state']): LineResult {
    const { ropeLengthM, depthM } = this.problem
    const rope = this.rope
    const shape = this.#shape
    let hanging = hangingFor(found.root)
    let miss = Math.abs(found.isLast ? found.residual : this.#fineMiss(hanging)) / ropeLengthM
    if (miss > acceptedMiss) {
      // A jump: a weight or a neutral rope comes to rest. The side on which it rests is the balance.
      hanging = hangingFor(found.root - 1e-9)
      this.#fineMiss(hanging)
      if (rope.groundedM > 0) miss = 0
    }
    const converged = found.converged && rope.complete && miss <= acceptedMiss
    if (!converged) return failure('No balance of rope and float was found.', miss, this.#tries)
    const slackM = hanging.slackM
    const offsetM = slackM - rope.xM
    return {
      state,
      verticalN: hanging.pullZN,
      reserveN: state === 'under' ? 0 : this.buoyancyN - hanging.pullZN,
      dipM: state === 'under' ? depthM - hanging.topM : 0,
      floatDragN: hanging.pullXN - this.rope.slope.surfaceDrag() * slackM,
      potHorizontalN: hanging.pullXN + rope.dragXN,
      potUpliftN: hanging.pullZN + rope.dragZN - rope.weightN,
      offsetM,
      tensionMaxN: rope.tensionMaxN,
      onBottomM: rope.groundedM,
      slackSurfaceM: slackM + lengthAbove(shape, depthM),
      shape: drawn(shape, slackM, offsetM, depthM),
      loads: {
        dragXN: rope.dragXN + this.rope.slope.surfaceDrag() * slackM,
        dragZN: rope.dragZN,
        weightN: rope.weightN,
      },
      residual: miss,
      iterations: this.#tries,
      converged,
    }
  }
}

/** A root, and whether the function was last asked at that very place. */
interface Balanced extends Root {
  readonly isLast: boolean
}

/** A root close to `near`, by the secant; `undefined` when it does not settle in a few steps. */
function polish(f: (q: number) => number, near: number, from: number, to: number): Balanced | undefined {
  const whole = to - from
  const inside = (q: number) => Math.min(to, Math.max(from, q))
  let before = near
  let missBefore = f(before)
  let q = inside(before + (before > from + whole / 2 ? -1e-4 : 1e-4) * whole)
  for (let evaluations = 2; evaluations < 9; evaluations += 1) {
    const miss = f(q)
    const next = inside(q - (miss * (q - before)) / (miss - missBefore))
    if (!Number.isFinite(next)) return undefined
    if (Math.abs(next - q) <= 1e-9 * whole)
      return { root: q, residual: miss, evaluations, converged: true, isLast: true }
    before = q
    missBefore = miss
    q = next
  }
  return undefined
}

/** Length of the drawn rope above the surface, where a floating rope between weights in truth lies on it. */
function lengthAbove(shape: readonly number[], depthM: number): number {
  let length = 0
  for (let i = 2; i + 1 < shape.length; i += 2) {
    const [x0 = 0, z0 = 0, x1 = 0, z1 = 0] = shape.slice(i - 2, i + 2)
    if (z0 + z1 > 2 * depthM + 1e-9) length += Math.hypot(x1 - x0, z1 - z0)
  }
  return length
}

/** Points from the float to the pot, x from the pot, none above the surface. */
function drawn(shape: readonly number[], slackM: number, offsetM: number, depthM: number): Float64Array {
  const first = slackM > 0 ? [offsetM, depthM] : []
  const points = new Float64Array(first.length + shape.length)
  points.set(first)
  for (let i = 0; i + 1 < shape.length; i += 2) {
    points[first.length + i] = (shape[i] ?? 0) + offsetM - slackM
    points[first.length + i + 1] = Math.min(depthM, shape[i + 1] ?? 0)
  }
  return points
}
