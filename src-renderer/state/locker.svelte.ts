import { group } from 'd3-array'
import type { Request } from '@shared/contract/contract'
import type { LockerState, PotState } from '@shared/journal/locker-state'
import { compareNumbers } from '@shared/journal/run'
import type { EventDraft } from '@shared/schema/journal'
import { surroundingsOf } from '@shared/season/surroundings'
import type { AppError, Result } from '@shared/units/result'
import { notices } from '@renderer/ui/notices.svelte'
import { reader } from '@renderer/ui/reader.svelte'
import { bridge } from './bridge'
import { figures } from './figures.svelte'
import { LatestWorker } from './latest-worker'
import { noLives, type LivesAnswer, type LivesQuestion } from './lives/lives-question'
import { packs } from './packs.svelte'
import { settings } from './settings.svelte'
import { shelf, waters } from './shelf'
import { stateNotes as w } from './words'

const nothing: LockerState = {
  pots: {},
  parts: {},
  runs: {},
  stock: {},
  prices: {},
  missing: [],
  problems: [],
}

/** What is written, and how it is told. */
interface Written {
  readonly state: LockerState
  readonly events: readonly string[]
}

/** The pots owned: what the history comes to, and how every part stands. */
class Locker {
  state = $state.raw<LockerState>(nothing)
  /** Files of the history that could not be read to the end. */
  trouble = $state.raw<readonly string[]>([])
  error = $state.raw<AppError>()
  loaded = $state(false)
  nowMs = $state(Date.now())
  aheadMonths = $state(6)
  budget = $state<number>()
  /** The pot last looked at, for coming back to it. */
  lastLookedAt = $state<string>()
  lives = $state.raw<LivesAnswer>(noLives)
  /** Whether `lives` are those of `state` and not of a state before it. */
  judged = $derived(this.lives.nowMs === this.nowMs)

  pots = $derived(
    Object.values(this.state.pots).sort(
      (a, b) => compareNumbers(a.number, b.number) || (a.id < b.id ? -1 : 1),
    ),
  )
  missing = $derived(this.state.missing.flatMap((id) => (this.state.pots[id] ? [this.state.pots[id]] : [])))
  reportsByPot = $derived(group(this.lives.reports, (report) => report.pot.id))

  /** Only designs that are owned: to say what a haul asks of a rope takes a model. */
  #around = $derived.by(() => {
    const owned = new Set(Object.values(this.state.pots).map((pot) => pot.design))
    return surroundingsOf({
      ...figures.tables,
      designs: shelf.items.flatMap(({ document }) => (owned.has(document.id) ? [document] : [])),
      waters: waters.items.map(({ document }) => document),
      trip: settings.current.trip,
      rules: (region) => packs.find(region),
    })
  })

  #worker: LatestWorker<LivesQuestion, LivesAnswer> | undefined

  async load(): Promise<void> {
    const answer = await bridge('locker:state', {})
    this.error = answer.ok ? undefined : answer.error
    if (answer.ok) {
      this.trouble = answer.value.trouble
      this.#take(answer.value.state)
    }
    this.loaded = true
  }

  find(id: string | undefined): PotState | undefined {
    return id === undefined ? undefined : this.state.pots[id]
  }

  /** Asks how every part stands; call it from an effect, so that it follows everything it depends on. */
  judge(): void {
    const question: LivesQuestion = {
      state: this.state,
      context: {
        nowMs: this.nowMs,
        aheadMonths: this.aheadMonths,
        around: this.#around,
        decimalMark: reader.decimalMark,
      },
      overrides: settings.current.assumptions ?? {},
      budget: this.budget,
    }
    this.#worker ??= this.#hire()
    this.#worker.ask(question)
  }

  /** Writes events and offers the way back; says why where they are refused. */
  record(events: readonly EventDraft[], said: string): Promise<boolean> {
    return this.#write(bridge('locker:record', { events: [...events] }), said)
  }

  /** The same for whoever tells refusals on its own. */
  async tryRecord(events: readonly EventDraft[], said: string): Promise<Result<Written>> {
    const answer = await bridge('locker:record', { events: [...events] })
    if (answer.ok) this.#took(answer.value, said)
    return answer
  }

  async addPots(pots: Request<'locker:add-pots'>['pots'], said: string): Promise<Result<Written>> {
    const answer = await bridge('locker:add-pots', { pots })
    if (answer.ok) this.#took(answer.value, said)
    return answer
  }

  replace(request: Request<'locker:replace'>, said: string): Promise<boolean> {
    return this.#write(bridge('locker:replace', request), said)
  }

  async addPhoto(request: Request<'photos:add'>): Promise<Result<{ file: string }>> {
    const answer = await bridge('photos:add', request)
    if (answer.ok) this.#take(answer.value.state)
    return answer
  }

  /** Takes events back, the last first; what is taken back stays in the history. */
  takeBack(events: readonly string[]): Promise<boolean> {
    const undos = events.toReversed().map((target) => ({ kind: 'undo' as const, target }))
    return this.record(undos, w.takenBack)
  }

  async #write(asked: Promise<Result<Written>>, said: string): Promise<boolean> {
    const answer = await asked
    if (answer.ok) this.#took(answer.value, said)
    else notices.say(answer.error.message, { tone: 'fails' })
    return answer.ok
  }

  #took({ state, events }: Written, said: string): void {
    this.#take(state)
    // One note at a time: in a day's work they come quickly, and the history has the rest.
    notices.say(said, { topic: 'gear', undo: () => void this.takeBack(events) })
  }

  #take(state: LockerState): void {
    this.state = state
    this.nowMs = Date.now()
  }

  #hire(): LatestWorker<LivesQuestion, LivesAnswer> {
    const worker = new Worker(new URL('./lives/lives-worker.ts', import.meta.url), { type: 'module' })
    return new LatestWorker(
      worker,
      (answer) => (this.lives = answer),
      () => notices.say(w.notJudged, { tone: 'fails' }),
    )
  }
}

export const locker = new Locker()
