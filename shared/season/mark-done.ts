import type { InstalledPart } from '@shared/schema/gear'
import type { EventDraft } from '@shared/schema/journal'
import type { DueItem } from './due'
import { itemOf, quantityOf } from './item'

/** What is said when a thing is marked as done. */
export interface Done {
  /** Id of the new part, and the day it was put in. */
  readonly newPart: string
  readonly on: string
  readonly reason?: 'planned' | 'worn' | 'failed'
  /** Inspections: what was found. */
  readonly grade?: 0 | 1 | 2 | 3 | 4
  readonly diameterLossPct?: number
  readonly brokenBars?: number
  /** Takes what was used off the stock. */
  readonly fromStock?: boolean
}

/**
 * The events that marking a thing as done writes: a like part put in (and taken from stock), an inspection, a
 * cleaning.
 *
 * @param item the thing
 * @param done what was done
 * @returns events to append, in order
 */
export function markDone(item: DueItem, done: Done): EventDraft[] {
  const { report } = item
  if (item.action === 'clean') return [{ kind: 'clean', pot: item.pot }]
  if (!report) return []
  const part = report.part.part
  if (item.action === 'inspect')
    return [
      {
        ...{ kind: 'inspect', part: part.id },
        ...(done.grade === undefined ? {} : { grade: done.grade }),
        ...(done.diameterLossPct === undefined ? {} : { diameterLossPct: done.diameterLossPct }),
        ...(done.brokenBars === undefined ? {} : { brokenBars: done.brokenBars }),
      },
    ]
  const fresh: InstalledPart = { ...part, id: done.newPart, installedOn: done.on }
  const replaced: EventDraft = { kind: 'replace', part: part.id, with: fresh, reason: done.reason ?? 'worn' }
  const quantity = quantityOf(part)
  return done.fromStock && quantity !== undefined
    ? [replaced, { kind: 'stock', item: itemOf(part), change: -quantity }]
    : [replaced]
}
