import { readDocument } from '@shared/schema/read-document'
import { WaterSchema, type Water } from '@shared/schema/water'
import { notices } from '@renderer/ui/notices.svelte'
import { Autosave, unsaved } from './autosave.svelte'
import { freshId } from './fresh-pot'
import { History } from './history.svelte'
import { route } from './route.svelte'
import { settings } from './settings.svelte'
import { waters } from './shelf'
import { withoutUndefined } from './without-undefined'
import { stateNotes as w } from './words'

/** The water that lies open: what it says, the way back, and its saving. */
export class WaterDesk {
  history = new History<Water | undefined>(undefined)
  autosave = new Autosave(() => this.#save())
  #last = $state<string>()
  /** Revision that the history goes on from; another one on the shelf means that somebody else saved. */
  #revision = $state.raw<string>()

  /** The one asked for by the address, the last one looked at, the one on the Bench, or the first there is. */
  id = $derived.by((): string | undefined => {
    const asked = route.place === 'waters' ? route.detail : ''
    const wanted = [asked, this.#last, settings.current.currentWater]
    return wanted.find((one) => waters.find(one)) ?? waters.sorted[0]?.document.id
  })
  water = $derived.by((): Water | undefined =>
    this.#isOurs() ? this.history.current : waters.find(this.id)?.document,
  )
  canUndo = $derived.by(() => this.#isOurs() && this.history.canUndo)
  canRedo = $derived.by(() => this.#isOurs() && this.history.canRedo)

  async choose(id: string): Promise<void> {
    await this.autosave.flush()
    this.#last = id
    route.go('waters', id)
  }

  change(change: Partial<Water>, key: string): void {
    const { water } = this
    if (!water) return
    const read = readDocument(WaterSchema, withoutUndefined({ ...water, ...change }), 'water')
    if (!read.ok) {
      notices.say(read.error.message, { tone: 'fails' })
      return
    }
    if (!this.#isOurs()) {
      this.history.restart(water)
      this.#revision = waters.find(this.id)?.revision
    }
    this.history.push(read.value, key)
    this.autosave.touch()
  }

  undo(): void {
    this.history.undo()
    this.autosave.touch()
  }

  redo(): void {
    this.history.redo()
    this.autosave.touch()
  }

  #isOurs(): boolean {
    return this.history.current?.id === this.id && this.#isNewest()
  }

  #isNewest(): boolean {
    return this.#revision !== undefined && waters.find(this.history.current?.id)?.revision === this.#revision
  }

  async #save(): Promise<boolean> {
    const water = this.history.current
    if (!water) return true
    if (!this.#isNewest()) return this.#saveApart(water)
    const answer = await waters.save(water, this.#revision)
    if (answer.ok) {
      // Another water may lie open by now, with a revision of its own.
      if (this.history.current?.id === water.id) this.#revision = answer.value.revision
      return true
    }
    if (answer.error.code === 'conflict') return this.#saveApart(water)
    notices.say(answer.error.message, { tone: 'fails', topic: unsaved })
    return false
  }

  /** Somebody else changed the water since it was opened: both are kept, and the reader is told. */
  async #saveApart(water: Water): Promise<boolean> {
    const apart: Water = { ...water, id: freshId(), name: w.apart(water.name) }
    const answer = await waters.save(apart)
    await waters.load()
    if (!answer.ok) {
      notices.say(answer.error.message, { tone: 'fails', topic: unsaved })
      return false
    }
    this.#revision = undefined
    this.#last = apart.id
    if (route.place === 'waters') route.go('waters', apart.id)
    notices.say(w.keptApart(water.name, apart.name))
    return true
  }
}

export const waterDesk = new WaterDesk()
