import type { Finding, PartName, VerdictName } from '@shared/schema/check'
import { tick } from 'svelte'
import { bench } from '@renderer/state/bench.svelte'
import { route } from '@renderer/state/route.svelte'
import { nextStep, tripFields, type NextStep, type StripField, type TripField } from './next-step'
import { type PartId } from './part-ids'

/** What is open on the Bench and what is pointed at; none of it belongs to the design. */
class BenchView {
  part = $state<PartId>('frame')
  verdict = $state<VerdictName>()
  /** The part a finding pointed at, until another compartment is opened. */
  pointed = $state<PartName>()
  partsDrawer = $state(false)
  tripOpen = $state(false)
  middle = $state<'pot' | 'why' | 'fishing' | 'cuts'>('pot')
  #wanted: StripField | undefined

  openPart(id: PartId): void {
    this.part = id
    this.pointed = undefined
  }

  /** Where a finding leads from here; nothing where it is about neither a part nor a field. */
  stepFor(finding: Finding): NextStep | undefined {
    return nextStep(finding, bench.trip.region)
  }

  /** Goes where a finding leads: its compartment and its place on the pot, or the field of the strip. */
  async go({ to }: NextStep, pointed?: PartName): Promise<void> {
    if ('field' in to) return this.#goToField(to.field)
    this.part = to.part
    this.pointed = to.part === 'stow' ? undefined : pointed
    this.partsDrawer = true
    await tick()
    document.getElementById(`part-${to.part}`)?.focus()
  }

  #goToField(field: StripField): void {
    // A saved water says its own depth and current, and is changed where it is kept.
    const { chosen } = bench.setup
    if (chosen !== undefined && ['depth', 'current', 'bottom'].includes(field))
      return route.go('waters', chosen)
    this.#wanted = field
    if (isTripField(field)) this.tripOpen = true
    else this.focusWanted()
  }

  /** Gives the focus to the field that a finding led to; false where none is waited for. */
  focusWanted(): boolean {
    const field = this.#wanted
    this.#wanted = undefined
    const control =
      field && document.querySelector<HTMLElement>(`[data-field='${field}'] :is(input, select, button)`)
    control?.focus()
    return Boolean(control)
  }
}

const isTripField = (field: StripField): field is TripField => tripFields.some((one) => one === field)

export const benchView = new BenchView()
