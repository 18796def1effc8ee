import {
  verdictNames,
  type Check,
  type Figure,
  type Verdict,
  type VerdictName,
  type VerdictState,
} from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { conditionsAt } from '@shared/tides/conditions'
import { fullCheck, type FullCheckInput } from '@shared/verdicts/full-check'
import type { MatchWater } from './match-water'
import { knownLimits, potLimits, type LimitMemo } from './pot-limits'
import { shareWithin } from './tide-index'

/** What every cell of a match shares. */
export interface MatchSetting extends Pick<
  FullCheckInput,
  'materials' | 'coefficients' | 'fishingFigures' | 'trip' | 'locale' | 'today'
> {
  /** Rules that hold at a water; undefined where there are none. */
  readonly packFor: (water: Water) => RulePack | undefined
}

/** One design at one water. Everything is reckoned cautiously; what cannot be told is left out. */
export interface MatchCell {
  readonly potId: string
  readonly waterId: string
  readonly overall: VerdictState
  readonly states: Readonly<Record<VerdictName, VerdictState>>
  /** Share of the time in which it holds, in which its float shows, and in which both. */
  readonly holdsShare: number | undefined
  readonly showsShare: number | undefined
  readonly bothShare: number | undefined
  /** Current at which it would move, less the strongest expected [m/s]. */
  readonly marginMps: number | undefined
  /** Buoyancy that the float has left in the strongest current [N]. */
  readonly floatReserveN: number | undefined
  /** Mass to add to the base ring so that it holds [kg]. */
  readonly ringMassNeededKg: number | undefined
  /** Why, in one sentence: the worst finding, or what it holds up to. */
  readonly reason: string
}

/**
 * One design at one water: the six verdicts at the strongest current, and the shares of the time.
 *
 * @param pot     the design
 * @param place   the water, made ready
 * @param setting materials, coefficients, trip and rules
 * @param memo    limits of this design already worked out for other waters
 */
export function matchCell(pot: Pot, place: MatchWater, setting: MatchSetting, memo?: LimitMemo): MatchCell {
  const { packFor, ...shared } = setting
  const { water, predicted, ladder, index } = place
  const trip = tripTo(water, setting.trip)
  const check = fullCheck({ ...shared, pot, trip, water, predicted, pack: packFor(water) })
  const conditions = conditionsAt(water, predicted)
  const limits = index && potLimits({ ...shared, pot, trip, conditions }, 'cautious', ladder, memo)
  const share = (thresholds: Parameters<typeof shareWithin>[1]) => index && shareWithin(index, thresholds)
  const { holdsBottom, floatShows } = check.verdicts
  return {
    potId: pot.id,
    waterId: water.id,
    overall: check.overall,
    states: statesOf(check),
    holdsShare: limits?.holds && share([limits.holds]),
    showsShare: limits?.shows && share([limits.shows]),
    bothShare: limits?.holds && share(knownLimits(limits)),
    marginMps: marginOf(holdsBottom),
    floatReserveN: cautious(floatShows.figures?.['reserveN']),
    ringMassNeededKg: cautious(holdsBottom.figures?.['ringMassNeededKg']),
    reason: reasonOf(check),
  }
}

/** The same trip, gone to this water: its region and zone are the ones that count. */
export const tripTo = ({ region, zone }: Water, trip: Trip | undefined): Trip => ({
  ...(trip ?? { format: 'potwright/trip', version: 1 }),
  ...(region !== undefined && { region }),
  ...(zone !== undefined && { zone }),
})

/** Every design at every water, a cell at a time, so that whoever asks can show progress or stop. */
export function* matchCells(
  pots: readonly Pot[],
  places: readonly MatchWater[],
  setting: MatchSetting,
): Generator<MatchCell> {
  for (const pot of pots) {
    const memo: LimitMemo = new Map()
    for (const place of places) yield matchCell(pot, place, setting, memo)
  }
}

const rank: Record<VerdictState, number> = { holds: 0, close: 1, 'cannot-tell': 2, fails: 3 }

/** Best first: by the worst verdict, then by the share of the time in which it works, then by the margin. */
export function ranked(cells: readonly MatchCell[]): MatchCell[] {
  return [...cells].sort(
    (a, b) =>
      rank[a.overall] - rank[b.overall] ||
      (b.bothShare ?? -1) - (a.bothShare ?? -1) ||
      (b.marginMps ?? -Infinity) - (a.marginMps ?? -Infinity) ||
      (a.potId < b.potId ? -1 : 1),
  )
}

function statesOf(check: Check): Record<VerdictName, VerdictState> {
  const { legal, holdsBottom, floatShows, lifts, fishes, stows } = check.verdicts
  return {
    legal: legal.state,
    holdsBottom: holdsBottom.state,
    floatShows: floatShows.state,
    lifts: lifts.state,
    fishes: fishes.state,
    stows: stows.state,
  }
}

function marginOf({ figures }: Verdict): number | undefined {
  const slide = cautious(figures?.['slideCurrentMps'])
  const tip = cautious(figures?.['tipCurrentMps'])
  const worst = figures?.['worstCurrentMps']
  if (slide === undefined || tip === undefined || typeof worst !== 'number') return undefined
  return Math.min(slide, tip) - worst
}

const cautious = (figure: Figure | undefined): number | undefined =>
  typeof figure === 'object' && !Array.isArray(figure) ? figure.low : undefined

/** The first finding of the worst verdict; where all hold, what it holds up to. */
function reasonOf({ overall, verdicts }: Check): string {
  const worst = verdictNames.find((name) => verdicts[name].state === overall) ?? 'holdsBottom'
  const verdict = verdicts[overall === 'holds' ? 'holdsBottom' : worst]
  return (verdict.findings.find(({ state }) => state === overall) ?? verdict.findings[0])?.what ?? ''
}
