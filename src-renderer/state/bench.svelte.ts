import type { Check } from '@shared/schema/check'
import { PotSchema, type Pot } from '@shared/schema/pot'
import { readDocument } from '@shared/schema/read-document'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { ok, type Result } from '@shared/units/result'
import { notices } from '@renderer/ui/notices.svelte'
import { Autosave } from './autosave.svelte'
import { firstSetup, firstTrip, typedWater, type Sheet, type WaterSetup } from './bench-sheet'
import { checkSheet } from './check-sheet'
import type { Stored } from './document-shelf.svelte'
import { firstPot, freshId } from './fresh-pot'
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
  autosave = new Autosave(() => this.#save())
  /** The sheet the check was last asked about; it follows the hand once a frame. */
  #settled = $state.raw<Sheet>() as Sheet
  #frame = 0
  /** Path of the size that is changing under the hand, as `body.heightMm`, for as long as it is. */
  dimension = $state<string>()
  #dimensionTimer: ReturnType<typeof setTimeout> | undefined
  #savedPot: Pot | undefined
  #savedSheet: Sheet | undefined
  /** By design, the revision that its changes here were made from; another one on the shelf is somebody else's. */
  #bases: Readonly<Record<string, string>> = {}

  constructor(day: string) {
    this.history = new History({ pot: firstPot(), trip: firstTrip(day), setup: firstSetup })
    this.#settled = this.history.current
    this.#savedPot = this.history.current.pot
    this.#savedSheet = this.history.current
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
    const next = { ...this.sheet, pot: this.#asKept(pot) }
    if (this.autosave.state === 'clean') this.history.restart(next)
    else this.history.push(next, 'open')
    this.#savedPot = next.pot
    this.#savedSheet = next
    this.#settle()
    rememberPot(pot.id)
  }

  /** After the shelf was read again: a design that was changed elsewhere, and not here, lies there as it is now. */
  catchUp(): void {
    const kept = shelf.find(this.pot.id)
    if (!kept || this.pot !== this.#savedPot || kept.revision === this.#bases[this.pot.id]) return
    this.#savedPot = this.#asKept(this.pot)
    this.history.restart({ ...this.sheet, pot: this.#savedPot })
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
      pot: this.#asKept(saved?.document ?? this.pot),
      trip: trip ? { ...trip, date: this.trip.date } : this.trip,
      setup: { typed: benchWater ?? firstSetup.typed, chosen: waters.find(currentWater)?.document.id },
    }
    this.history.restart(sheet)
    this.#savedPot = sheet.pot
    this.#savedSheet = sheet
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

  /** A design as it stands on the shelf, whose revision what is done to it from now on starts from. */
  #asKept(pot: Pot): Pot {
    const kept = shelf.find(pot.id)
    if (kept) this.#startFrom(kept)
    return kept?.document ?? pot
  }

  #startFrom({ document, revision }: Stored<Pot>): void {
    this.#bases = { ...this.#bases, [document.id]: revision }
  }

  async #save(): Promise<boolean> {
    const { sheet } = this
    // Both at once: a page that is closing may start calls, but not wait for one before the next.
    const saved = await Promise.all([
      this.#saveStrip(sheet),
      sheet.pot === this.#savedPot || this.#savePot(sheet.pot),
    ])
    return saved.every(Boolean)
  }

  async #saveStrip(sheet: Sheet): Promise<boolean> {
    if (sheet.trip === this.#savedSheet?.trip && sheet.setup === this.#savedSheet.setup) return true
    const { chosen, typed } = sheet.setup
    const left = { trip: sheet.trip, benchWater: typed, currentPot: sheet.pot.id }
    const written = await (chosen === undefined
      ? settings.set(left, ['currentWater'])
      : settings.set({ ...left, currentWater: chosen }))
    if (written) this.#savedSheet = sheet
    return written
  }

  async #savePot(pot: Pot): Promise<boolean> {
    const kept = shelf.find(pot.id)
    const base = this.#bases[pot.id]
    if (kept && base !== undefined && kept.revision !== base) return this.#saveApart(pot)
    const answer = await shelf.save(pot, kept?.revision)
    if (answer.ok) {
      this.#savedPot = pot
      this.#startFrom(answer.value)
      if (settings.current.currentPot !== pot.id) rememberPot(pot.id)
      return true
    }
    if (answer.error.code !== 'conflict') {
      notices.say(answer.error.message, { tone: 'fails' })
      return false
    }
    return this.#saveApart(pot)
  }

  /** Somebody else changed the design since it was opened: both are kept, and the reader is told. */
  async #saveApart(pot: Pot): Promise<boolean> {
    const apart: Pot = { ...pot, id: freshId(), name: w.apart(pot.name) }
    const answer = await shelf.save(apart)
    await shelf.load()
    if (!answer.ok) {
      notices.say(answer.error.message, { tone: 'fails' })
      return false
    }
    this.#startFrom(answer.value)
    this.#savedPot = apart
    const isSame = this.pot === pot
    // The way back would lead to the design that is somebody else's now.
    this.history.restart({
      ...this.sheet,
      pot: isSame ? apart : { ...this.pot, id: apart.id, name: apart.name },
    })
    notices.say(w.keptApart(pot.name, apart.name))
    return true
  }
}

export const bench = new BenchState(today())
