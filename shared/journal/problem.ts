import type { JournalEvent } from '@shared/schema/journal'
import type { JournalProblem, ProblemCode } from './locker-state'

/** Notes what does not add up about one event. */
export function problemWith(code: ProblemCode, event: JournalEvent, what: string): JournalProblem {
  const { id, machine, seq, at } = event
  return { code, event: id, machine, seq, at, what }
}

/** Order in which problems are told: as their events happened, then by kind and by what they say. */
export function compareProblems(a: JournalProblem, b: JournalProblem): number {
  const left = `${a.at} ${a.event} ${a.code} ${a.what}`
  const right = `${b.at} ${b.event} ${b.code} ${b.what}`
  return left < right ? -1 : left > right ? 1 : 0
}
