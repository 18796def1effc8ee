import { asResult } from '@main/storage/storage-fault'
import type { PhotoFolder } from '@main/storage/photo-folder'
import type { Handlers, Subject } from '@shared/contract/contract'
import { historyOf } from '@shared/journal/history'
import type { LockerState } from '@shared/journal/locker-state'
import { runsLatestFirst, withLatestRuns } from '@shared/journal/view'
import type { EventDraft } from '@shared/schema/journal'
import { err, ok, type Result } from '@shared/units/result'
import { itemOf, quantityOf } from '@shared/season/item'
import type { LockerBook } from './locker-book'
import { lockerTable, type SeasonSources } from './season-tables'

/** Runs that come along with the locker; earlier ones are asked for. */
const shownRuns = 10

export interface LockerParts {
  readonly locker: LockerBook
  readonly photos: PhotoFolder
  readonly newId: () => string
  readonly sources: SeasonSources
}

export function lockerHandlers({ locker, newId, sources }: LockerParts): Handlers<Subject<'locker'>> {
  const record = (drafts: readonly EventDraft[]) =>
    asResult(async () => {
      const recorded = await locker.record(drafts)
      if (!recorded.ok) return recorded
      const { book, events } = recorded.value
      return ok({ state: withLatestRuns(book.state, shownRuns), events: events.map((event) => event.id) })
    })
  return {
    'locker:state': () =>
      asResult(async () => {
        const { book, trouble } = await locker.open()
        return ok({ state: withLatestRuns(book.state, shownRuns), trouble })
      }),
    'locker:add-pots': ({ pots }) =>
      asResult(async () => {
        const taken = await numberTaken(
          locker,
          pots.map((pot) => pot.number),
        )
        if (taken !== undefined)
          return err({
            code: 'invalid',
            message: `The number ${taken} is on another pot in use. Nothing was added.`,
            path: 'number',
          })
        const added = pots.map(({ number, design, parts }) => ({
          ...{ pot: newId(), number, design },
          parts: parts.map((part) => ({ ...part, id: newId() })),
        }))
        return record([{ kind: 'add-pots', pots: added, at: since(pots, sources.now()) }])
      }),
    'locker:replace': (request) => {
      const fresh = { ...request.with, id: newId() }
      const quantity = quantityOf(fresh)
      return record([
        { kind: 'replace', part: request.part, with: fresh, reason: request.reason },
        ...(request.fromStock && quantity !== undefined
          ? [{ kind: 'stock' as const, item: itemOf(fresh), change: -quantity }]
          : []),
      ])
    },
    'locker:record': ({ events }) => record(events),
    'locker:history': ({ pot, limit }) =>
      asResult(async () => {
        const { book } = await locker.open()
        return ok(historyOf(book.events, { limit, ...(pot === undefined ? {} : { pot }) }))
      }),
    'locker:event': ({ event }) =>
      asResult(async () => {
        const { book } = await locker.open()
        const found = book.events.find(({ id }) => id === event)
        return found ? ok(found) : err({ code: 'not_found', message: 'That is no longer in the history.' })
      }),
    'locker:runs': ({ skip, limit }) =>
      asResult(async () => {
        const { book } = await locker.open()
        return ok(runsLatestFirst(book.state).slice(skip, skip + limit))
      }),
    'locker:export': (request) =>
      asResult(async () => {
        const { book } = await locker.open()
        return ok(await lockerTable(request, book, sources))
      }),
  }
}

export function photoHandlers({ locker, photos }: LockerParts): Handlers<Subject<'photos'>> {
  return {
    'photos:add': ({ pot, part, caption, base64 }) =>
      asResult(async (): Promise<Result<{ state: LockerState; file: string }>> => {
        const { book } = await locker.open()
        if (!book.state.pots[pot])
          return err({
            code: 'not_found',
            message: 'That pot is not in the locker. The photo was not added.',
          })
        const kept = await photos.add(base64)
        if (!kept.ok) return kept
        const file = kept.value
        const recorded = await locker.record([
          {
            kind: 'photo',
            pot,
            file,
            ...(part === undefined ? {} : { part }),
            ...(caption === undefined ? {} : { caption }),
          },
        ])
        return recorded.ok
          ? ok({ state: withLatestRuns(recorded.value.book.state, shownRuns), file })
          : recorded
      }),
    'photos:get': ({ file }) => asResult(() => photos.get(file)),
  }
}

/** The first of some numbers that stands twice among them or is on a pot in use. */
async function numberTaken(locker: LockerBook, numbers: readonly string[]): Promise<string | undefined> {
  const { book } = await locker.open()
  const taken = new Set(
    Object.values(book.state.pots)
      .filter((pot) => pot.status !== 'retired' && pot.status !== 'lost')
      .map((pot) => pot.number),
  )
  return numbers.find((number) => taken.size === taken.add(number).size)
}

/**
 * Pots were there since the oldest of their parts was put in, so that work of earlier days can be written down
 * after them.
 */
function since(
  pots: readonly { readonly parts: readonly { readonly installedOn: string }[] }[],
  now: Date,
): string {
  const days = pots.flatMap((pot) => pot.parts.map((part) => `${part.installedOn}T00:00:00.000Z`))
  return [now.toISOString(), ...days].reduce((a, b) => (b < a ? b : a))
}
