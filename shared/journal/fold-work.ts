import type { EventOf } from '@shared/schema/journal'
import type { WorkEvent } from './fold'
import type { Catch, HaulEntry, LockerState, PotState, RunState } from './locker-state'
import { takeOff } from './fitting'
import { passTime } from './passage'

/** Applies what is done with a whole pot: setting, hauling, storing, losing, finding. Objections were heard before. */
export function applyWorkEvent(state: LockerState, event: WorkEvent): void {
  const pot = state.pots[event.pot]
  if (!pot) return
  const atMs = Date.parse(event.at)
  switch (event.kind) {
    case 'set':
      return setPot(state, pot, event, atMs)
    case 'haul':
      return haulPot(state, pot, event, atMs)
    case 'lose':
      return changePlace(pot, 'lost', atMs)
    case 'find':
      // A skipped float that is seen again is still in the water; a lost pot that is found comes ashore.
      if (pot.status === 'lost') changePlace(pot, 'ashore', atMs)
      else pot.seenAt = event.at
      return
    case 'retire':
      changePlace(pot, 'retired', atMs)
      for (const id of pot.parts) {
        const part = state.parts[id]
        if (part) takeOff(part, pot, 'retired', event.at)
      }
      return
    case 'store':
      passTime(pot, atMs)
      pot.storage = event.where
      return
    case 'clean':
      passTime(pot, atMs)
      pot.wetDays = 0
  }
}

function changePlace(pot: PotState, status: PotState['status'], atMs: number): void {
  passTime(pot, atMs)
  pot.status = status
}

function setPot(state: LockerState, pot: PotState, event: EventOf<'set'>, atMs: number): void {
  changePlace(pot, 'in-water', atMs)
  pot.storage = 'unstated'
  const run = runOf(state, event.run ?? `day-${event.at.slice(0, 10)}`, event.at)
  run.sets.push({ pot: pot.id, event: event.id, at: event.at })
  pot.run = run.id
  if (event.water !== undefined) run.water = event.water
  pot.water = event.water ?? run.water
  pot.temperatureC = event.temperatureC
  pot.bait = event.bait
}

function haulPot(state: LockerState, pot: PotState, event: EventOf<'haul'>, atMs: number): void {
  changePlace(pot, 'ashore', atMs)
  pot.been.hauls += 1
  const caught = {
    kept: event.kept ?? 0,
    undersized: event.undersized ?? 0,
    female: event.female ?? 0,
    other: event.other ?? 0,
  }
  addCatch(pot.caught, caught)
  const entry: HaulEntry = {
    pot: pot.id,
    event: event.id,
    at: event.at,
    caught,
    damage: event.damage ?? [],
    ...(event.baitLeft === undefined ? {} : { baitLeft: event.baitLeft }),
  }
  pot.lastHaul = entry
  const run = event.run ?? pot.run
  if (run !== undefined) runOf(state, run, event.at).hauls.push(entry)
}

function addCatch(total: Catch, more: Catch): void {
  total.kept += more.kept
  total.undersized += more.undersized
  total.female += more.female
  total.other += more.other
}

function runOf(state: LockerState, id: string, startedAt: string): RunState {
  return (state.runs[id] ??= { id, startedAt, sets: [], hauls: [] })
}
