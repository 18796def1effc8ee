import type { Finding, VerdictState } from '@shared/schema/check'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Trip } from '@shared/schema/trip'
import type { LegalCase } from './facts'
import { judge } from './judge'

export interface RegionVerdict {
  readonly region: string
  readonly name: string
  readonly state: VerdictState
  /** What keeps it from being legal, worst first. */
  readonly reasons: readonly Finding[]
}

const rank: Record<VerdictState, number> = { holds: 0, close: 1, 'cannot-tell': 2, fails: 3 }

/**
 * Where a design is legal: one verdict for each region, those where it is legal first.
 *
 * The trip's own zone is kept only in the region that has it: a zone of one region means nothing in another.
 *
 * @param packs regions to hold it against
 * @param legal the design, the trip where there is one, and today
 */
export function whereLegal(packs: readonly RulePack[], legal: Omit<LegalCase, 'water'>): RegionVerdict[] {
  const { trip } = legal
  return packs
    .map((pack) => {
      const { state, findings } = judge(pack, { ...legal, trip: trip && within(pack, trip) })
      const reasons = findings.filter((finding) => finding.state !== 'holds')
      return { region: pack.region, name: pack.name, state, reasons }
    })
    .toSorted((a, b) => rank[a.state] - rank[b.state] || a.name.localeCompare(b.name))
}

function within(pack: RulePack, trip: Trip): Trip {
  const { zone, ...rest } = trip
  const isKnown = zone !== undefined && pack.zones.some((one) => one.id === zone)
  return { ...rest, region: pack.region, ...(isKnown ? { zone } : {}) }
}
