import { starterPots } from '@shared/design/starter-pots'
import type { VerdictName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { Trip } from '@shared/schema/trip'
import { SvelteSet } from 'svelte/reactivity'
import { bench } from '@renderer/state/bench.svelte'
import { matching } from '@renderer/state/match.svelte'
import type { ProposeQuestion } from '@renderer/state/propose-question'

type Stow = NonNullable<Trip['stow']>

// What a small open boat has between the thwarts; only a start, all of it to be changed.
const firstStow: Stow = { lengthMm: 1200, widthMm: 1000, heightMm: 800, maxKg: 60 }

/** What is asked of the search. The trip is the one on the Bench; what is changed here changes it there. */
class ProposeForm {
  /** Waters left out; all are asked for at first. */
  leftOut = new SvelteSet<string>()
  shapeIds = new SvelteSet<string>(starterPots.map(({ id }) => id))
  mostKg = $state<number | undefined>(15)
  hauler = $state(false)

  shapes = $derived.by((): readonly Pot[] => {
    const own = matching.pots.filter(({ id }) => !starterPots.some((starter) => starter.id === id))
    return [...starterPots, ...own]
  })
  stow = $derived.by((): Stow => bench.trip.stow ?? firstStow)
  waters = $derived.by(() => matching.sourced.filter(({ water }) => !this.leftOut.has(water.id)))
  chosenShapes = $derived.by(() => this.shapes.filter(({ id }) => this.shapeIds.has(id)))

  toggleWater(id: string): void {
    if (!this.leftOut.delete(id)) this.leftOut.add(id)
  }

  toggleShape(id: string): void {
    if (!this.shapeIds.delete(id)) this.shapeIds.add(id)
  }

  changeStow(change: Partial<Stow>): void {
    bench.changeTrip({ stow: { ...this.stow, ...change } }, 'trip.stow')
  }

  question(): ProposeQuestion {
    // The room shown is the room asked for, so from here on it belongs to the trip.
    if (bench.trip.stow === undefined) this.changeStow({})
    const waived: VerdictName[] = this.hauler ? ['lifts'] : []
    return {
      ...matching.terms,
      waters: this.waters,
      trip: bench.trip,
      shapes: this.chosenShapes,
      mostKg: this.hauler ? undefined : this.mostKg,
      waived,
    }
  }
}

export const proposeForm = new ProposeForm()
