import { exposureAt } from '@shared/journal/exposure'
import type { LockerState, PartState } from '@shared/journal/locker-state'
import type { PartKind } from '@shared/schema/gear'
import type { WearAssumptions } from '@shared/wear/assumptions'
import { usualBelief } from '@shared/wear/age-life'
import { learn, type LifeBelief } from '@shared/wear/own-record'
import { usualLife } from '@shared/wear/usual-life'
import type { LifeRecord } from '@shared/wear/weibull-fit'

/** Parts alike enough to learn one life from. */
export function likeness(part: PartState): string {
  return `${part.part.kind} ${part.part.material ?? ''}`.trim()
}

/** Ages at failure and ages still good of one likeness, in months or fills as its usual life is counted. */
export interface OwnLives {
  readonly kind: PartKind
  readonly unit: string
  readonly record: { readonly failed: number[]; readonly survived: number[] }
}

/**
 * The user's own record of lives by likeness. A part taken out good or still in use counts as survived.
 *
 * @param state the locker
 * @param sheet figures, for the unit of each usual life
 * @param nowMs the time now
 * @returns records; parts without a usual life are left out
 */
export function ownLives(state: LockerState, sheet: WearAssumptions, nowMs: number): Map<string, OwnLives> {
  const lives = new Map<string, OwnLives>()
  for (const part of Object.values(state.parts)) {
    const usual = usualLife(part.part, sheet)
    const pot = state.pots[part.pot]
    if (!usual || !pot) continue
    const use = exposureAt(part, pot, nowMs)
    const age = usual.unit === 'fills' ? use.hauls : use.ageMonths
    if (!(age > 0)) continue
    const own = lives.get(likeness(part)) ?? {
      kind: part.part.kind,
      unit: usual.unit,
      record: { failed: [], survived: [] },
    }
    own.record[part.status === 'failed' ? 'failed' : 'survived'].push(age)
    lives.set(likeness(part), own)
  }
  return lives
}

/** What is believed of a likeness's life: the usual one, corrected by the user's own record. */
export function ownBelief(
  part: PartState,
  record: LifeRecord | undefined,
  sheet: WearAssumptions,
): LifeBelief {
  const usual = usualBelief(part.part, sheet)
  // Without a failure the record only says that nothing has happened yet; young parts must not look immortal.
  return record && record.failed.length > 0 ? learn(usual, record) : usual
}
