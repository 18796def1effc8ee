import type { LockerState, RunState } from './locker-state'

/**
 * The locker with its latest runs only, for whoever shows it: the runs of many years are long and asked for apart.
 *
 * @param state the locker
 * @param most  how many runs at most; those with pots still down always come along
 * @returns a view that shares everything else with the state
 */
export function withLatestRuns(state: LockerState, most: number): LockerState {
  const open = new Set(
    Object.values(state.pots).flatMap((pot) =>
      pot.status === 'in-water' && pot.run !== undefined ? [pot.run] : [],
    ),
  )
  const latest = runsLatestFirst(state)
  const kept = latest.filter((run, i) => i < most || open.has(run.id))
  return { ...state, runs: Object.fromEntries(kept.map((run) => [run.id, run])) }
}

/** Runs, the latest first. */
export function runsLatestFirst(state: LockerState): RunState[] {
  return Object.values(state.runs).sort((a, b) =>
    a.startedAt < b.startedAt ? 1 : a.startedAt > b.startedAt ? -1 : a.id < b.id ? 1 : -1,
  )
}
