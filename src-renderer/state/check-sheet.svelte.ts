import { fishes } from '@shared/fishing/fishes'
import { judge } from '@shared/rules/judge'
import type { Check, Finding, Verdict } from '@shared/schema/check'
import { worstState } from '@shared/schema/check'
import type { Water } from '@shared/schema/water'
import type { Sheet } from './bench-sheet'
import { packs } from './packs.svelte'

/** Everything that is known about a sheet: the six verdicts, from the rules and the models. */
export function checkSheet(sheet: Sheet, water: Water | undefined): Check {
  const unknown: Verdict = { state: 'cannot-tell', findings: [] }
  const legal = legalVerdict(sheet, water)
  const fishing = fishes({ pot: sheet.pot, trip: sheet.trip })
  const verdicts = {
    legal,
    holdsBottom: unknown,
    floatShows: unknown,
    lifts: unknown,
    fishes: fishing,
    stows: unknown,
  }
  return {
    format: 'potwright/check',
    version: 1,
    overall: worstState(Object.values(verdicts).map((verdict) => verdict.state)),
    verdicts,
  }
}

function legalVerdict({ pot, trip }: Sheet, water: Water | undefined): Verdict {
  const pack = packs.find(trip.region)
  if (pack) return judge(pack, { pot, trip, water, now: trip.date })
  return { state: 'cannot-tell', findings: [trip.region === undefined ? noRegion : noPack] }
}

const noRegion: Finding = {
  rule: 'legal:no-region',
  state: 'cannot-tell',
  part: 'trip',
  what: 'Choose a region to hold the gear against its rules.',
  missing: 'the region',
  standing: 'engineering',
}
const noPack: Finding = {
  ...noRegion,
  rule: 'legal:no-pack',
  what: 'No rules for this region are in Potwright. Ask its authority.',
  missing: 'rules of this region',
}
