import type { MatchCell } from '@shared/match/match'
import type { Pot } from '@shared/schema/pot'
import type { Water } from '@shared/schema/water'
import { SvelteMap, SvelteSet } from 'svelte/reactivity'
import { reader } from '@renderer/ui/reader.svelte'
import { bench } from './bench.svelte'
import { designs } from './designs'
import { figures } from './figures.svelte'
import type { MatchAnswer, MatchQuestion, MatchTerms, RingRow, SourcedWater } from './match-question'
import { packs } from './packs.svelte'
import { waters } from './shelf'
import { stationConstants } from './station-constants.svelte'
import { today } from './today'
import { matchWorker } from './workers'

const cellKey = (potId: string, waterId: string) => `${potId} ${waterId}`

const isSameDesign = (a: Pot, b: Pot) => JSON.stringify({ ...a, id: '' }) === JSON.stringify({ ...b, id: '' })

/** Every design against every water: what is asked, and the cells as they come. */
class MatchState {
  /** First day; undefined means today. */
  day = $state<string>()
  days = $state(30)
  #withStarters = $state<boolean>()
  pinned = new SvelteSet<string>()
  cells = new SvelteMap<string, MatchCell>()
  faults = new SvelteMap<string, string>()
  progress = $state.raw<{ done: number; of: number }>()
  broken = $state(false)
  rings = $state.raw<{ potId: string; ringKg: number | undefined; rows: readonly RingRow[] }>()
  #worker: Worker | undefined
  #ringWorker: Worker | undefined

  /** A shelf with little on it is matched together with the starting shapes, until the reader says otherwise. */
  withStarters = $derived.by(() => this.#withStarters ?? designs().saved.length < 2)
  pots = $derived.by((): readonly Pot[] => {
    const known = designs()
    const own = [known.bench, ...known.saved]
    // A starting shape that stands on the Bench unchanged is in the list already.
    const others = known.starters.filter((one) => !own.some((pot) => isSameDesign(pot, one)))
    return this.withStarters ? [...own, ...others] : own
  })
  waters = $derived.by((): readonly Water[] => waters.sorted.map(({ document }) => document))
  /** Waters whose stations answered, with what they brought; the others wait or are told of. */
  sourced = $derived.by((): readonly SourcedWater[] =>
    this.waters.flatMap((water) => {
      const constants = stationConstants.of(water)
      return constants?.ok ? [{ water, constants: constants.value }] : []
    }),
  )
  /** Waters whose stations are not there. */
  unknown = $derived.by((): Readonly<Record<string, string>> => {
    const found = this.waters.flatMap((water): [string, string][] => {
      const constants = stationConstants.of(water)
      return constants && !constants.ok ? [[water.id, constants.error.message]] : []
    })
    return Object.fromEntries(found)
  })
  terms = $derived.by((): MatchTerms => ({
    waters: this.sourced,
    day: this.day ?? today(),
    days: this.days,
    trip: bench.trip,
    packs: packs.list,
    locale: reader.locale,
    tables: figures.tables,
    fishing: figures.fishing,
  }))
  question = $derived.by((): MatchQuestion => ({ ...this.terms, pots: this.pots }))

  cell(potId: string, waterId: string): MatchCell | undefined {
    return this.cells.get(cellKey(potId, waterId))
  }

  /** Why a whole water has no cells. */
  faultOf(waterId: string): string | undefined {
    return this.unknown[waterId] ?? this.faults.get(waterId)
  }

  /** Starts anew; what was still being worked out is dropped. Cells stay until their successors come. */
  ask(question: MatchQuestion): void {
    this.stop()
    this.faults.clear()
    this.broken = false
    if (question.pots.length === 0 || question.waters.length === 0) return
    this.progress = { done: 0, of: question.pots.length * question.waters.length }
    this.#worker = this.#start({ kind: 'match', question })
  }

  askRings(pot: Pot, terms: MatchTerms): void {
    this.#ringWorker?.terminate()
    this.#ringWorker = this.#start({ kind: 'rings', pot, terms })
  }

  stop(): void {
    this.#worker?.terminate()
    this.#worker = undefined
    this.progress = undefined
  }

  showStarters(on: boolean): void {
    this.#withStarters = on
  }

  pin(potId: string): void {
    if (!this.pinned.delete(potId)) this.pinned.add(potId)
  }

  #start(asked: object): Worker {
    const worker = matchWorker()
    worker.onmessage = ({ data }: MessageEvent<MatchAnswer>) => this.#take(worker, data)
    worker.onerror = () => {
      this.broken = true
      this.stop()
    }
    worker.postMessage(asked)
    return worker
  }

  #take(worker: Worker, answer: MatchAnswer): void {
    if (answer.kind === 'fault') this.faults.set(answer.waterId, answer.message)
    else if (answer.kind === 'rings')
      this.rings = { potId: answer.potId, ringKg: answer.ringKg, rows: answer.rings }
    else if (answer.kind === 'cells') {
      for (const cell of answer.cells) this.cells.set(cellKey(cell.potId, cell.waterId), cell)
      this.progress = { done: answer.done, of: answer.of }
    } else {
      worker.terminate()
      if (worker === this.#worker) this.stop()
    }
  }
}

export const matching = new MatchState()
