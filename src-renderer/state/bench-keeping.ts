import type { Pot } from '@shared/schema/pot'
import { notices } from '@renderer/ui/notices.svelte'
import { unsaved } from './autosave.svelte'
import type { Sheet } from './bench-sheet'
import type { Stored } from './document-shelf.svelte'
import { freshId } from './fresh-pot'
import { rememberPot } from './recent-pots'
import { settings } from './settings.svelte'
import { shelf } from './shelf'
import { stateNotes as w } from './words'

/** What of the Bench is kept already, and how the rest is: the design on its shelf, the strip in the settings. */
export class BenchKeeping {
  #savedPot: Pot
  #savedSheet: Sheet
  /** By design, the revision that its changes here were made from; another one on the shelf is somebody else's. */
  #bases: Readonly<Record<string, string>> = {}

  /**
   * @param sheet   what lies on the Bench and needs no saving
   * @param onapart told when a design that somebody else changed too is from now on kept as another
   */
  constructor(
    sheet: Sheet,
    private readonly onapart: (was: Pot, apart: Pot) => void,
  ) {
    this.#savedPot = sheet.pot
    this.#savedSheet = sheet
  }

  /** Takes what was just put on the Bench for what is kept. */
  take(sheet: Sheet): void {
    this.#savedPot = sheet.pot
    this.#savedSheet = sheet
  }

  /** A design as it stands on the shelf, whose revision what is done to it from now on starts from. */
  asKept(pot: Pot): Pot {
    const kept = shelf.find(pot.id)
    if (kept) this.#startFrom(kept)
    return kept?.document ?? pot
  }

  /** The design as it stands on the shelf now, where it was changed elsewhere and not here; it counts as kept. */
  newerOf(pot: Pot): Pot | undefined {
    const kept = shelf.find(pot.id)
    if (!kept || pot !== this.#savedPot || kept.revision === this.#bases[pot.id]) return undefined
    this.#savedPot = this.asKept(pot)
    return this.#savedPot
  }

  /** Writes what is not kept yet, and says whether it could. */
  async save(sheet: Sheet): Promise<boolean> {
    // Both at once: a page that is closing may start calls, but not wait for one before the next.
    const saved = await Promise.all([
      this.#saveStrip(sheet),
      sheet.pot === this.#savedPot || this.#savePot(sheet.pot),
    ])
    return saved.every(Boolean)
  }

  async #saveStrip(sheet: Sheet): Promise<boolean> {
    if (sheet.trip === this.#savedSheet.trip && sheet.setup === this.#savedSheet.setup) return true
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
      notices.say(answer.error.message, { tone: 'fails', topic: unsaved })
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
      notices.say(answer.error.message, { tone: 'fails', topic: unsaved })
      return false
    }
    this.#startFrom(answer.value)
    this.#savedPot = apart
    this.onapart(pot, apart)
    notices.say(w.keptApart(pot.name, apart.name))
    return true
  }

  #startFrom({ document, revision }: Stored<Pot>): void {
    this.#bases = { ...this.#bases, [document.id]: revision }
  }
}
