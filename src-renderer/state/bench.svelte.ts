import type { Check } from '@shared/schema/check'
import { PotSchema, type Pot } from '@shared/schema/pot'
import { readDocument } from '@shared/schema/read-document'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { ok, type Result } from '@shared/units/result'
import { notices } from '@renderer/ui/notices.svelte'
import { Autosave } from './autosave.svelte'
import { BenchKeeping } from './bench-keeping'
import { firstSetup, firstTrip, typedWater, type Sheet, type WaterSetup } from './bench-sheet'
import { checkSheet } from './check-sheet'
import { firstPot } from './fresh-pot'
import { History } from './history.svelte'
import { rememberPot } from './recent-pots'
import { settings } from './settings.svelte'
import { shelf, waters } from './shelf'
import { stationConstants } from './station-constants.svelte'
import { today } from './today'
import { tripOutlook, type Predicted } from './water-outlook'
import { withoutUndefined } from './without-undefined'
import { stateNotes as w } from './words'

/** How long a size stays drawn on the pot after the hand has left its slider. */
const DIMENSION_MS = 1500

/** One and the same, so that nothing is reckoned anew while there is nothing to predict. */
const unpredicted: Predicted = {}

/** The pot under the hands: its design, the conditions on the strip, the way back, and what the check says. */
export class BenchState {
  history: History<Sheet>
  #keeping: BenchKeeping
  autosave = new Autosave(() => this.#keeping.save(this.sheet))
  /** The sheet the check was last asked about; it follows the hand once a frame. */
  #settled = $state.raw<Sheet>() as Sheet
  #frame = 0
  /** Path of the size that is changing under the hand, as `body.heightMm`, for as long as it is. */
  dimension = $state<string>()
  #dimensionTimer: ReturnType<typeof setTimeout> | undefined

  constructor(day: string) {
    this.history = new History({ pot: firstPot(), trip: firstTrip(day), setup: firstSetup })
    this.#settled = this.history.current
    this.#keeping = new BenchKeeping(this.history.current, (was, apart) => this.#goOnWith(was, apart))
  }

  sheet = $derived.by(() => this.history.current)
  pot = $derived.by(() => this.sheet.pot)
  trip = $derived.by(() => this.sheet.trip)
  setup = $derived.by(() => this.sheet.setup)
  water = $derived.by((): Water | undefined => this.#waterOf(this.sheet))
  #date = $derived.by(() => this.trip.date)
  #soakH = $derived.by(() => this.trip.soakH)
  /** What a saved water does at its strongest on the days of the trip; undefined while its stations are asked. */
  outlook = $derived.by((): Result<Predicted> | undefined => {
    const { water } = this
    if (!water || this.setup.chosen === undefined) return ok(unpredicted)
    const constants = stationConstants.of(water)
    return constants?.ok
      ? tripOutlook(water, constants.value, { date: this.#date, soakH: this.#soakH })
      : constants
  })
  predicted = $derived.by((): Predicted => (this.outlook?.ok ? this.outlook.value : unpredicted))
  check = $derived.by((): Check => checkSheet(this.#settled, this.#waterOf(this.#settled), this.predicted))

  #waterOf(sheet: Sheet): Water | undefined {
    return sheet.setup.chosen === undefined
      ? typedWater(sheet.setup, sheet.trip)
      : waters.find(sheet.setup.chosen)?.document
  }

  /** Changes the design; one that would no longer be a pot is refused, and the design stays as it was. */
  changePot(change: Partial<Pot>, key: string): void {
    const next = withoutUndefined({ ...this.pot, ...change })
    const read = readDocument(PotSchema, next, 'pot design')
    if (read.ok) {
      this.#showDimension(key)
      this.#change({ ...this.sheet, pot: read.value }, key)
    } else notices.say(read.error.message, { tone: 'fails' })
  }

  changeTrip(change: Partial<Trip>, key: string): void {
    this.#change({ ...this.sheet, trip: withoutUndefined({ ...this.trip, ...change }) }, key)
  }

  changeWater(change: Partial<WaterSetup['typed']>, key: string): void {
    const typed = withoutUndefined({ ...this.setup.typed, ...change })
    this.#change({ ...this.sheet, setup: { ...this.setup, typed } }, key)
  }

  /** Takes a saved water for the strip, with its region and zone; undefined goes back to what is typed in. */
  chooseWater(id: string | undefined): void {
    const water = waters.find(id)?.document
    const trip = water?.region
      ? withoutUndefined({ ...this.trip, region: water.region, zone: water.zone })
      : this.trip
    this.#change({ ...this.sheet, trip, setup: { ...this.setup, chosen: water?.id } }, 'water')
  }

  undo(): void {
    this.history.undo()
    this.#moved()
  }

  redo(): void {
    this.history.redo()
    this.#moved()
  }

  /** Puts a design on the bench. What was on it is saved first; where it cannot be, undo brings it back. */
  async open(pot: Pot): Promise<void> {
    await this.autosave.flush()
    const next = { ...this.sheet, pot: this.#keeping.asKept(pot) }
    if (this.autosave.state === 'clean') this.history.restart(next)
    else this.history.push(next, 'open')
    this.#keeping.take(next)
    this.#settle()
    rememberPot(pot.id)
  }

  /** After the shelf was read again: a design that was changed elsewhere, and not here, lies there as it is now. */
  catchUp(): void {
    const newer = this.#keeping.newerOf(this.pot)
    if (!newer) return
    this.history.restart({ ...this.sheet, pot: newer })
    this.#settle()
    notices.say(w.changedElsewhere(this.pot.name))
  }

  /** After the design on the bench was taken off the shelf: the next one comes up, or a fresh start. */
  async makeRoom(): Promise<void> {
    const next = shelf.sorted[0]?.document ?? firstPot()
    await this.open(next)
  }

  /** Puts back the design, the trip and the water that were on the bench when it was last left. */
  resume(): void {
    const { trip, benchWater, currentPot, currentWater } = settings.current
    const saved = shelf.find(currentPot) ?? shelf.sorted[0]
    const sheet: Sheet = {
      pot: this.#keeping.asKept(saved?.document ?? this.pot),
      trip: trip ? { ...trip, date: this.trip.date } : this.trip,
      setup: { typed: benchWater ?? firstSetup.typed, chosen: waters.find(currentWater)?.document.id },
    }
    this.history.restart(sheet)
    this.#keeping.take(sheet)
    this.#settle()
  }

  #showDimension(key: string): void {
    this.dimension = key
    clearTimeout(this.#dimensionTimer)
    this.#dimensionTimer = setTimeout(() => (this.dimension = undefined), DIMENSION_MS)
  }

  #change(next: Sheet, key: string): void {
    this.history.push(next, key)
    this.#moved()
  }

  #moved(): void {
    this.autosave.touch()
    cancelAnimationFrame(this.#frame)
    this.#frame = requestAnimationFrame(() => this.#settle())
  }

  #settle(): void {
    this.#settled = this.history.current
  }

  /** After a design was kept apart from somebody else's; the way back would lead to the one that is theirs now. */
  #goOnWith(was: Pot, apart: Pot): void {
    const { pot } = this
    this.history.restart({
      ...this.sheet,
      pot: pot === was ? apart : { ...pot, id: apart.id, name: apart.name },
    })
  }
}

export const bench = new BenchState(today())
