import { holdsBottom } from '@shared/verdicts/holds-bottom'
import { baseRing } from '@shared/verdicts/base-ring'
import { barSizesMm } from '@shared/verdicts/single-changes'
import { prepare } from '@shared/verdicts/prepared'
import { barMassPerM } from '@shared/design/materials/lookup'
import type { CheckInput } from '@shared/verdicts/check-input'
import type { Verdict } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'

/** How heavy a base ring a pot needs at one water; the lightest bar that is sold, tried with the pot as it then is. */
export type RingAnswer =
  | { readonly kind: 'bar'; readonly barDiameterMm: number; readonly ringMassKg: number }
  /** Not even the thickest bar holds it. */
  | { readonly kind: 'none' }
  | { readonly kind: 'cannot-tell'; readonly missing: string }

/**
 * The thinnest base ring with which a pot holds cautiously.
 *
 * Bars are tried as they are sold, thinnest first, each solved anew: a thicker ring also catches more water.
 *
 * @param input pot, materials, coefficients and the conditions of the water
 * @returns bar diameter [mm] and mass of the ring [kg], or why there is none
 */
export function ringNeeded(input: CheckInput): RingAnswer {
  for (const barDiameterMm of barSizesMm) {
    const pot = withBaseRing(input.pot, barDiameterMm)
    const prepared = prepare({ ...input, pot })
    const ring = baseRing(prepared)
    const perM = ring && barMassPerM(input.materials, ring.material, barDiameterMm)
    if (!ring || perM === undefined) return { kind: 'cannot-tell', missing: 'the base ring' }
    const verdict = holdsBottom(prepared)
    const unknown = verdict.findings.find(({ state }) => state === 'cannot-tell')
    if (unknown) return { kind: 'cannot-tell', missing: unknown.missing ?? 'what this depends on' }
    if (staysCautiously(verdict))
      return { kind: 'bar', barDiameterMm, ringMassKg: perM * ring.pieceLengthM * ring.count }
  }
  return { kind: 'none' }
}

/** The same pot on another base ring; a mass from the scales no longer holds for it. */
export function withBaseRing(pot: Pot, barDiameterMm: number): Pot {
  const changed: Pot = {
    ...pot,
    ...(pot.frame && {
      frame: pot.frame.map((member) => (member.role === 'base-ring' ? { ...member, barDiameterMm } : member)),
    }),
  }
  delete changed.measuredMassKg
  return changed
}

/** Whether it neither slides nor tips by the cautious figures. */
export function staysCautiously({ findings }: Verdict): boolean {
  const moves = findings.filter(({ rule }) => rule === 'bottom:slides' || rule === 'bottom:tips')
  return moves.length > 0 && moves.every(({ state }) => state === 'holds')
}
