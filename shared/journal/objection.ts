import type { EventDraft, EventOf } from '@shared/schema/journal'
import type { LockerState, PotState, ProblemCode } from './locker-state'
import { isWet } from './passage'

/** Why an event does not fit the history so far. */
export interface Objection {
  readonly code: ProblemCode
  readonly what: string
  /** Whether it is left out; otherwise it counts all the same. */
  readonly leftOut: boolean
}

/** An event as far as it says something, with or without its place in a journal. */
export type Said = EventDraft & { readonly at: string }

/** A day begins up to 14 hours before its UTC date where it is kept in local time. */
const zoneSlackMs = 14 * 3_600_000

/**
 * What speaks against an event, given what came before it: the one test used when events are folded and before
 * they are written.
 *
 * @param state  what the history came to before it
 * @param event  the event
 * @param latest time after which it lies in the future, in UTC
 * @returns the objection, or undefined
 */
export function objectionTo(state: LockerState, event: Said, latest: string): Objection | undefined {
  if (event.at > latest) return leftOut('in-the-future', 'Its date is in the future; it was left out.')
  switch (event.kind) {
    case 'set':
    case 'haul':
    case 'lose':
    case 'find':
    case 'retire':
    case 'store':
    case 'clean':
      return toWork(state.pots[event.pot], event.kind)
    case 'photo':
      return state.pots[event.pot]
        ? undefined
        : leftOut('unknown-pot', 'A photo names a pot that was not there at the time; it was left out.')
    case 'inspect':
    case 'repair':
      return toLook(state, event)
    case 'replace':
      return (
        toPart(state, event.part) ??
        (state.parts[event.with.id]
          ? leftOut('part-twice', 'The new part is already on a pot; it was left out.')
          : undefined)
      )
    case 'swap-part': {
      const to = state.pots[event.to]
      return to && to.status !== 'retired'
        ? toPart(state, event.part)
        : leftOut('unknown-pot', 'It names a pot that is not in use; it was left out.')
    }
    default:
      return undefined
  }
}

function leftOut(code: ProblemCode, what: string): Objection {
  return { code, what, leftOut: true }
}

function toWork(pot: PotState | undefined, kind: EventDraft['kind']): Objection | undefined {
  if (!pot) return leftOut('unknown-pot', 'It names a pot that was not there at the time; it was left out.')
  if (pot.status === 'retired')
    return leftOut('retired-pot', `Pot ${pot.number} is retired; it was left out.`)
  if (kind === 'haul' && !isWet(pot))
    return leftOut('haul-not-set', `Pot ${pot.number} was hauled but was not set; the haul was left out.`)
  if (kind === 'set' && pot.status === 'in-water')
    return {
      code: 'set-twice',
      what: `Pot ${pot.number} was set again without a haul; it counts as moved.`,
      leftOut: false,
    }
  return undefined
}

function toPart(state: LockerState, id: string): Objection | undefined {
  const part = state.parts[id]
  return part?.status === 'fitted' && state.pots[part.pot]
    ? undefined
    : leftOut('unknown-part', 'It names a part that is on no pot; it was left out.')
}

function toLook(state: LockerState, event: Pick<EventOf<'inspect'>, 'part' | 'at'>): Objection | undefined {
  const unknown = toPart(state, event.part)
  if (unknown) return unknown
  const part = state.parts[event.part]
  const number = part && state.pots[part.pot]?.number
  return part && Date.parse(event.at) + zoneSlackMs < Date.parse(part.part.installedOn)
    ? leftOut(
        'inspection-before-part',
        `An inspection on pot ${number ?? ''} is older than the part; it was left out.`,
      )
    : undefined
}
