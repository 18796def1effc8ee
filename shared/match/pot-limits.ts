import type { Outlook } from '@shared/physics/coefficients'
import { criticalCurrents } from '@shared/physics/holding/critical-current'
import { pullUnderCurrent } from '@shared/physics/line/pull-under'
import type { CheckInput } from '@shared/verdicts/check-input'
import { depthsOver } from '@shared/verdicts/depths'
import { lineIn, prepare, standingIn, type Prepared } from '@shared/verdicts/prepared'
import { thresholdOf, type Threshold } from './thresholds'

/** Up to what surface current a pot does its work at one water, by the depth at the moment. */
export interface PotLimits {
  /** It neither slides nor tips; left out where that cannot be told. */
  readonly holds: Threshold | undefined
  /** Its float shows with its reserve; left out where that cannot be told, or where the pot is tied off. */
  readonly shows: Threshold | undefined
  /** What would have to be known. */
  readonly missing: readonly string[]
}

/** Limits of one pot already worked out, for waters of the same bottom, density and waves. */
export type LimitMemo = Map<string, number>

/**
 * Limits of a pot over a range of depths, by the same measures as the verdicts: the rope's pull is solved with the
 * pot, and the float must keep its reserve.
 *
 * @param input   pot, materials, coefficients and what is known of the water (bottom, waves, density)
 * @param outlook `cautious` for anything that is to be relied on
 * @param depthM  rising depths [m], as `depthLadder` gives them
 * @param memo    kept by the caller for one pot and outlook, so that waters alike share the work
 * @returns limits [m/s] at those depths
 * @source `criticalCurrents` and `pullUnderCurrent`
 */
export function potLimits(
  input: CheckInput,
  outlook: Outlook,
  depthM: Float64Array,
  memo: LimitMemo = new Map(),
): PotLimits {
  const prepared = prepare(input)
  const { conditions, mass, sets } = prepared
  const bottom = conditions?.bottom
  const tiedOff = input.trip?.tiedOff === true
  const alike = JSON.stringify([bottom, conditions?.waves, conditions?.temperatureC, conditions?.salinityPsu])
  const once = (what: string, depth: number, workOut: () => number): number => {
    const key = `${what} ${depth} ${alike}`
    const known = memo.get(key) ?? workOut()
    memo.set(key, known)
    return known
  }
  const hasLine = lineIn(prepared, sets[outlook], depthM[0] ?? 1, 1) !== undefined
  const missing = [
    ...mass.missing,
    ...(bottom === undefined ? ['the bottom at this water'] : []),
    ...(hasLine || tiedOff ? [] : ['the rope and the float']),
  ]
  return {
    holds:
      bottom === undefined || missing.length > 0
        ? undefined
        : thresholdOf(depthM, (depth) =>
            once('holds', depth, () => {
              const pot = standingIn(prepared, outlook, covering(prepared, depth), 1, bottom)
              const { slide, tip } = criticalCurrents(pot)
              return Math.min(slide.currentMps, tip.currentMps)
            }),
          ),
    shows:
      tiedOff || !hasLine
        ? undefined
        : thresholdOf(depthM, (depth) =>
            once('shows', depth, () => {
              const line = lineIn(prepared, sets[outlook], covering(prepared, depth), 1)
              // A rope too short to reach the surface shows no float at any current.
              return (line && pullUnderCurrent(line, 1 / sets[outlook].floatReserve)?.currentMps) ?? 0
            }),
          ),
    missing,
  }
}

/** The depth at which the verdicts would solve the pot: over it, however low the water. */
function covering(prepared: Prepared, depthM: number): number {
  const { conditions } = prepared
  if (!conditions) return depthM
  return depthsOver(prepared, { ...conditions, depthLowM: depthM, depthHighM: Infinity })?.lowM ?? depthM
}

/** The limits that are known, to be kept to together. */
export const knownLimits = ({ holds, shows }: PotLimits): Threshold[] =>
  [holds, shows].filter((threshold) => threshold !== undefined)
