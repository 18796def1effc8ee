import { brentRoot, type Root } from '@shared/numerics/brent-root'
import { polishedRoot } from '@shared/numerics/polished-root'
import { floatDragArea, netBuoyancy, sunkDragArea } from '@shared/physics/float/float'
import { coarseStep, fineStep, HangingRope, type Following, type Hanging } from './hanging-rope'
import { failure, type LineProblem, type LineResult, type LineSolution } from './problem'
import { lengthAbove, pointsFromPot } from './rope-shape'

/** `fine` answers to a millionth of the force; `rough`, to a thousandth, is for searches that solve many lines. */
export type Accuracy = 'fine' | 'rough'

/** Miss of the rope's end, over its length, up to which a solution counts as converged. */
const acceptedMiss: Readonly<Record<Accuracy, number>> = { fine: 1e-5, rough: 1e-2 }

/** A root, and whether the rope was last followed at that very place. */
interface Balanced extends Root {
  readonly isLast: boolean
}

/** Weights below this decide nothing and are left out [N, N/m]. */
const traceN = 1e-9

/** The line without weights that are as good as none, and without those beyond the rope's end. */
function withoutTraces(problem: LineProblem): LineProblem {
  const { ropeWetWeightNpm, ropeLengthM, clumps } = problem
  return {
    ...problem,
    ropeWetWeightNpm: Math.abs(ropeWetWeightNpm) < traceN ? 0 : ropeWetWeightNpm,
    clumps: clumps.filter(
      (clump) => clump.atFromFloatM < ropeLengthM && Math.abs(clump.wetWeightN) >= traceN,
    ),
  }
}

/** One line in one current, and the tries that bring it into balance. */
export class LineBalance {
  readonly problem: LineProblem
  readonly buoyancyN: number
  readonly rope: HangingRope
  readonly #accuracy: Accuracy
  readonly #surfaceMps: number
  readonly #forceScale: number
  readonly #shape: number[] = []
  #tries = 0

  constructor(given: LineProblem, accuracy: Accuracy = 'fine') {
    const problem = withoutTraces(given)
    const { waterDensity, ropeLengthM, ropeDiameterM, surfaceCurrentMps } = problem
    this.problem = problem
    this.#accuracy = accuracy
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

  /** The line in balance, with the float at the surface or under. */
  solve(): LineResult {
    const loaded = this.#surfaceHanging(this.buoyancyN, 0)
    const rough = this.#miss(loaded, { tolerance: coarseStep })
    const isClear = Math.abs(rough) > 1e-2 * this.problem.ropeLengthM
    // Positive where even all the buoyancy does not hold the rope up to the float.
    const missAtMost = isClear ? rough : this.#fineMiss(loaded)
    return missAtMost > 0 ? this.#under(missAtMost) : this.#atSurface(missAtMost)
  }

  /** Height of the rope's end above the pot under a float at the surface that gives this upward force [m]. */
  missAt(verticalN: number): number {
    return this.#fineMiss(this.#surfaceHanging(verticalN, 0))
  }

  /** Rope that hangs between a float at the surface, giving a share of its buoyancy, and the pot [m]. */
  lengthUnder(share: number): number | undefined {
    const { potHeightM, ropeLengthM } = this.problem
    const hanging = this.#surfaceHanging(share * this.buoyancyN, 0)
    this.rope.hang(hanging, { tolerance: fineStep, stopAtM: potHeightM })
    const reached = this.rope.complete && this.rope.zM <= potHeightM + 1e-9 * ropeLengthM
    return reached ? this.rope.hungM : undefined
  }

  /** The float at the surface: the buoyancy used, or the rope lying on the surface. */
  #atSurface(missAtMost: number): LineResult {
    const { ropeWetWeightNpm, depthM, potHeightM } = this.problem
    const hanging = (q: number) => this.#hangingFor(q)
    // Without any pull a sinking rope lies level where it is; a floating one may still come down to the pot.
    const rise = depthM - potHeightM
    const missAtNone = ropeWetWeightNpm < 0 ? this.#miss(hanging(0), { tolerance: coarseStep }) : rise
    const most = this.#parameterOf(this.buoyancyN)
    const found =
      missAtNone < 0
        ? this.#balance(hanging, [-1, 0], [rise, missAtNone])
        : this.#balance(hanging, [0, most], [missAtNone, missAtMost])
    return this.#solution(found, hanging, 'surface')
  }

  /** The float drawn under: the height at which its net buoyancy is in balance. */
  #under(missAtMost: number): LineResult {
    const { potHeightM, depthM, ropeLengthM } = this.problem
    const hanging = (z: number) => this.#sunkHanging(z)
    // From the height of the bridle the rope can only go down; how far matters little to the search.
    const found = this.#balance(hanging, [potHeightM, depthM], [-ropeLengthM / 2, missAtMost])
    return this.#solution(found, hanging, 'under')
  }

  /**
   * The unknown at which the rope's end meets the pot: found on a coarse rope, then brought in on a fine one by the
   * secant; where the secant fails, on the fine rope from the start.
   */
  #balance(
    hanging: (q: number) => Hanging,
    [from, to]: readonly [number, number],
    endValues: readonly [number, number],
  ): Balanced {
    const fine = (q: number) => this.#fineMiss(hanging(q))
    const whole = to - from
    if (this.#surfaceMps > 0) {
      const coarse = (q: number) => this.#miss(hanging(q), { tolerance: coarseStep })
      const isRough = this.#accuracy === 'rough'
      const tolerance = (isRough ? 1e-6 : 1e-4) * whole
      const near = brentRoot(coarse, from, to, { tolerance, endValues })
      if (isRough) return { ...near, isLast: false }
      const polished = polishedRoot(fine, near.root, from, to)
      if (polished) return { ...polished, isLast: true }
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

  /** The miss as closely as asked for; a fine rope's shape is kept. */
  #fineMiss(hanging: Hanging): number {
    return this.#accuracy === 'rough'
      ? this.#miss(hanging, { tolerance: coarseStep })
      : this.#miss(hanging, { tolerance: fineStep, shape: this.#shape })
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
    const accepted = acceptedMiss[this.#accuracy]
    if (miss > accepted) {
      // A jump: a weight or a neutral rope comes to rest. The side on which it rests is the balance.
      hanging = hangingFor(found.root - 1e-9)
      this.#fineMiss(hanging)
      if (rope.groundedM > 0) miss = 0
    }
    const converged = found.converged && rope.complete && miss <= accepted
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
      slackSurfaceM: Math.min(ropeLengthM, slackM + lengthAbove(shape, depthM)),
      shape: pointsFromPot(shape, slackM, offsetM, depthM),
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
