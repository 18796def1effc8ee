/** A body in a current with waves along it. */
export interface WaveCurrentLoad {
  readonly currentMps: number
  readonly orbitalMps: number
  readonly periodS: number
  /** Drag area Cd·A [m²]. */
  readonly dragAreaM2: number
  /** Inertia coefficient times solid volume [m³]. */
  readonly inertiaVolumeM3: number
  readonly waterDensity: number
}

/**
 * Greatest force over a wave on a body in a current along the wave.
 *
 * F = ½ρ CdA |u| u + ρ Cm V du/dt with u = Uc + Ub cos ωt, searched over the cycle: 48 phases, then a golden-section
 * search around the best one.
 *
 * Steady Cd holds for KC = Ub T/d above about 20; below, bars have up to twice the drag.
 *
 * @returns force [N]
 * @source Morison's equation; Sarpkaya & Isaacson, Mechanics of Wave Forces on Offshore Structures, 1981
 */
export function waveCurrentForce(load: WaveCurrentLoad): number {
  const omega = (2 * Math.PI) / load.periodS
  const drag = 0.5 * load.waterDensity * load.dragAreaM2
  const inertia = load.waterDensity * load.inertiaVolumeM3 * load.orbitalMps * omega
  const forceAt = (phase: number) => {
    const u = load.currentMps + load.orbitalMps * Math.cos(phase)
    return drag * Math.abs(u) * u - inertia * Math.sin(phase)
  }
  const step = (2 * Math.PI) / 48
  let best = 0
  for (let i = 1; i < 48; i += 1) if (forceAt(i * step) > forceAt(best)) best = i * step
  return Math.max(forceAt(best), peakBetween(forceAt, best - step, best + step))
}

const golden = (Math.sqrt(5) - 1) / 2

function peakBetween(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to]
  let left = high - golden * (high - low)
  let right = low + golden * (high - low)
  let [fl, fr] = [f(left), f(right)]
  for (let i = 0; i < 36; i += 1) {
    if (fl > fr) {
      high = right
      right = left
      fr = fl
      left = high - golden * (high - low)
      fl = f(left)
    } else {
      low = left
      left = right
      fl = fr
      right = low + golden * (high - low)
      fr = f(right)
    }
  }
  return Math.max(fl, fr)
}
