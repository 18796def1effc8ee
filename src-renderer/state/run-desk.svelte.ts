import type { PotState, RunState } from '@shared/journal/locker-state'
import { nextExpected, nextToSet, stillDown } from '@shared/journal/run'
import { runsLatestFirst } from '@shared/journal/view'
import type { EventDraft } from '@shared/schema/journal'
import { freshId } from './fresh-pot'
import { locker } from './locker.svelte'
import { localDay, today } from './today'

/** What holds for every float set from now on. */
export interface SettingDown {
  readonly water?: string | undefined
  readonly depthM?: number | undefined
  readonly temperatureC?: number | undefined
  readonly bait?: string | undefined
}

/** A day's work in hand: which string of floats, whether setting or hauling, and what holds for all of them. */
class RunDesk {
  #chosen = $state<string>()
  #mode = $state<'set' | 'haul'>()
  down = $state.raw<SettingDown>({})
  /** When it is said to have happened, in UTC; now where it is left out. */
  at = $state<string>()

  runs = $derived(runsLatestFirst(locker.state))
  /** The string in hand: the one chosen, else the latest with floats down, else today's. */
  run = $derived.by((): RunState | undefined => {
    if (this.#chosen !== undefined) return locker.state.runs[this.#chosen]
    const down = this.runs.find((run) => stillDown(locker.state, run).length > 0)
    return down ?? this.runs.find((run) => localDay(new Date(run.startedAt)) === today())
  })
  stillDown = $derived(this.run ? stillDown(locker.state, this.run) : [])
  mode = $derived(this.#mode ?? (this.stillDown.length > 0 ? 'haul' : 'set'))
  nextToSet = $derived(nextToSet(locker.state, this.run))
  nextToHaul = $derived(this.run && nextExpected(locker.state, this.run))
  ashore = $derived(locker.pots.filter((pot) => pot.status === 'ashore'))

  choose(run: string | undefined): void {
    this.#chosen = run
    this.#mode = undefined
  }

  begin(): void {
    this.#chosen = freshId()
    this.#mode = 'set'
  }

  turnTo(mode: 'set' | 'haul'): void {
    this.#mode = mode
  }

  /** The events that set floats in this order, on the string in hand or a new one. */
  settings(pots: readonly PotState[]): EventDraft[] {
    // Work goes on as it began: the first float down does not turn a day of setting into one of hauling.
    this.#mode ??= this.mode
    this.#chosen ??= this.run?.id ?? freshId()
    const run = this.#chosen
    return pots.map((pot) => ({ kind: 'set', pot: pot.id, run, ...this.#time(), ...said(this.down) }))
  }

  /** The event that hauls a float. */
  haul(pot: PotState, found: Omit<EventDraft & { kind: 'haul' }, 'kind' | 'pot' | 'at'>): EventDraft {
    return { kind: 'haul', pot: pot.id, ...this.#time(), ...found }
  }

  #time(): { at?: string } {
    return this.at === undefined ? {} : { at: this.at }
  }
}

function said(down: SettingDown) {
  const { water, depthM, temperatureC, bait } = down
  return {
    ...(water === undefined ? {} : { water }),
    ...(depthM === undefined ? {} : { depthM }),
    ...(temperatureC === undefined ? {} : { temperatureC }),
    ...(bait === undefined || bait.trim() === '' ? {} : { bait: bait.trim() }),
  }
}

export const runDesk = new RunDesk()
