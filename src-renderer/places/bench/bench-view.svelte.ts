import type { Finding, PartName, VerdictName } from '@shared/schema/check'
import { compartmentOf, type PartId } from './part-ids'

/** What is open on the Bench and what is pointed at; none of it belongs to the design. */
class BenchView {
  part = $state<PartId>('frame')
  verdict = $state<VerdictName>()
  /** The part a finding pointed at, until another compartment is opened. */
  pointed = $state<PartName>()
  partsDrawer = $state(false)
  middle = $state<'pot' | 'why' | 'cuts'>('pot')

  openPart(id: PartId): void {
    this.part = id
    this.pointed = undefined
  }

  /** Shows what a finding is about: its compartment and its place on the pot, or the field of the strip. */
  show(finding: Pick<Finding, 'part'>): void {
    if (!finding.part) return
    const id = compartmentOf(finding.part)
    if (!id) {
      document.querySelector<HTMLElement>(`[data-strip="${finding.part}"]`)?.focus()
      return
    }
    this.part = id
    this.pointed = finding.part
    this.partsDrawer = true
  }
}

export const benchView = new BenchView()
