import type { CoefficientSet } from '@shared/physics/coefficients'
import { bluffDrag } from '@shared/physics/bodies/bluff'
import { meanSquareBetween } from '@shared/physics/current/mean-square'
import type { CurrentProfile } from '@shared/physics/current/profile'
import { screenWithin, type ScreenModel } from '@shared/physics/netting/screen'
import { lolandWake, speedBehind } from '@shared/physics/netting/wake'
import { waveCurrentForce } from '@shared/physics/waves/wave-current-force'
import type { PartName } from '@shared/schema/check'
import type { FlowBody, PartDrag, PotDrag } from './flow-body'

/** The water around a pot, and how its drag is reckoned. */
export interface PotFlow {
  readonly current: CurrentProfile
  readonly waterDensity: number
  readonly coefficients: CoefficientSet
  readonly screenModel?: ScreenModel
  /** Waves at the bed, taken as running with the current. */
  readonly waves?: { readonly orbitalMps: number; readonly periodS: number }
}

/** Twine on which the Reynolds number is taken where a panel does not say [m]. */
const commonTwineM = 0.002

/**
 * Drag of a pot on the bed, part by part, with its overturning moment and its lift.
 *
 * Each body meets the mean square of the current over its height, F = ½ρ Cd A <u²>, at the height where that mean
 * acts. Netting takes its coefficient from a screen model, times what growth adds, up to a solid plate's; behind n panels the speed is reduced by rⁿ, r = 1 - 0.46 Cd
 * of the same panel face-on. Waves add to the current in each body, with the inertia of its solid volume, at the worst
 * moment of the wave.
 *
 * @param bodies the pot as the current meets it
 * @param flow   current, density, coefficients, model and waves
 * @returns drag [N], moment about the bed [N·m], lift [N], and the same by part
 * @source component build-up: Aarsnes et al. 1990 and Loland 1991 for netting, Hoerner 1965 for bars and bluff bodies
 */
export function potDrag(bodies: readonly FlowBody[], flow: PotFlow): PotDrag {
  const byPart = new Map<PartName, PartDrag>()
  let [dragN, momentNm, liftN] = [0, 0, 0]
  for (const body of bodies) {
    const force = bodyForce(body, flow)
    dragN += force.dragN
    momentNm += force.momentNm
    liftN += force.liftN
    const sofar = byPart.get(body.part)
    byPart.set(body.part, sofar ? added(sofar, force) : { part: body.part, ...force })
  }
  return { dragN, momentNm, liftN, byPart: [...byPart.values()] }
}

type Force = Omit<PartDrag, 'part'>

function bodyForce(body: FlowBody, flow: PotFlow): Force {
  const { coefficients, waterDensity, waves } = flow
  const bottomM = Math.max(0, 2 * body.centreHeightM - body.topHeightM)
  const mean = meanSquareBetween(flow.current, bottomM, Math.max(bottomM, body.topHeightM))
  const currentMps = Math.sqrt(mean.meanSquare) * coefficients.nearBedSpeed
  const { dragAreaM2, liftAreaM2, speedLeft } = areas(body, flow, currentMps + (waves?.orbitalMps ?? 0))
  const speed = currentMps * speedLeft
  const orbitalMps = (waves?.orbitalMps ?? 0) * speedLeft
  const dragN = waves
    ? waveCurrentForce({
        currentMps: speed,
        orbitalMps,
        periodS: waves.periodS,
        dragAreaM2,
        inertiaVolumeM3: coefficients.addedMass * body.volumeM3,
        waterDensity,
      })
    : 0.5 * waterDensity * dragAreaM2 * speed ** 2
  const liftN = 0.5 * waterDensity * liftAreaM2 * (speed + orbitalMps) ** 2
  return { dragN, momentNm: dragN * mean.centreM, liftN }
}

interface Areas {
  readonly dragAreaM2: number
  readonly liftAreaM2: number
  readonly speedLeft: number
}

function areas(body: FlowBody, flow: PotFlow, speedMps: number): Areas {
  const { coefficients } = flow
  const extraLift = body.liftAreaM2 ?? 0
  if (body.kind !== 'netting')
    return { dragAreaM2: ownCd(body, coefficients) * body.areaM2, liftAreaM2: extraLift, speedLeft: 1 }
  const model = flow.screenModel ?? 'aarsnes'
  const twine = {
    solidity: body.solidity ?? 0,
    speedMps,
    twineDiameterM: body.twineDiameterM ?? commonTwineM,
    viscosity: coefficients.viscosity,
  }
  const alphaRad = ((body.alphaDeg ?? 0) * Math.PI) / 180
  const clean = screenWithin(model, twine, alphaRad, coefficients.nettingSpread)
  const cd = withGrowth(clean.cd, body)
  const cl = clean.cd > 0 ? (clean.cl * cd) / clean.cd : 0
  const faceOn =
    alphaRad === 0 ? cd : withGrowth(screenWithin(model, twine, 0, coefficients.nettingSpread).cd, body)
  const speedLeft =
    body.shadowed > 0 ? speedBehind(lolandWake(faceOn, coefficients.wakeFactor), body.shadowed) : 1
  return {
    dragAreaM2: cd * body.areaM2,
    liftAreaM2: (body.liftSign ?? 0) * cl * body.areaM2 + extraLift,
    speedLeft,
  }
}

/** Growth multiplies the drag of netting, up to that of a solid plate. */
const withGrowth = (cd: number, { growthDrag = 1 }: FlowBody): number =>
  Math.max(cd, Math.min(growthDrag * cd, bluffDrag('square-plate')))

function ownCd(body: FlowBody, coefficients: CoefficientSet): number {
  if (body.cd !== undefined) return body.cd
  if (body.kind === 'bar') return coefficients.barCd
  return body.part === 'catch' ? coefficients.catchCd : coefficients.baitCd
}

const added = (a: PartDrag, b: Force): PartDrag => ({
  part: a.part,
  dragN: a.dragN + b.dragN,
  momentNm: a.momentNm + b.momentNm,
  liftN: a.liftN + b.liftN,
})
