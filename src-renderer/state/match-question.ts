import { frameMembers } from '@shared/design/frame-members'
import { barMassPerM } from '@shared/design/materials/lookup'
import { shapeOf } from '@shared/design/shape'
import type { FishingAssumptions } from '@shared/fishing/assumptions'
import { matchCells, tripTo, type MatchCell, type MatchSetting } from '@shared/match/match'
import { matchWater, type MatchWater } from '@shared/match/match-water'
import { ringNeeded, type RingAnswer } from '@shared/match/ring-needed'
import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import type { RulePack } from '@shared/schema/rule-pack'
import type { WaterConstants } from '@shared/schema/station'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { conditionsAt } from '@shared/tides/conditions'
import { waterDays } from '@shared/tides/predict-water'
import type { ReaderLocale } from '@shared/units/locale'
import type { Tables } from './figures.svelte'

/** A water with what its stations bring, as it crosses to a worker. */
export interface SourcedWater {
  readonly water: Water
  readonly constants: WaterConstants
}

/** What every question to the matching shares. */
export interface MatchTerms {
  readonly waters: readonly SourcedWater[]
  /** First day by each water's own clock, and how many, 1 … 400. */
  readonly day: string
  readonly days: number
  readonly trip: Trip
  readonly packs: readonly RulePack[]
  readonly locale: ReaderLocale
  readonly tables: Tables
  readonly fishing: FishingAssumptions
}

export interface MatchQuestion extends MatchTerms {
  readonly pots: readonly Pot[]
}

/** How heavy a ring one design needs at one water. */
export interface RingRow {
  readonly waterId: string
  /** Strongest current expected [m/s]; left out where it is not known. */
  readonly strongestMps: number | undefined
  readonly answer: RingAnswer
}

export type MatchAnswer =
  | {
      readonly kind: 'cells'
      readonly cells: readonly MatchCell[]
      readonly done: number
      readonly of: number
    }
  | {
      readonly kind: 'rings'
      readonly potId: string
      readonly ringKg: number | undefined
      readonly rings: readonly RingRow[]
    }
  /** A water that could not be predicted. */
  | { readonly kind: 'fault'; readonly waterId: string; readonly message: string }
  | { readonly kind: 'end' }

export function settingOf({ trip, packs, locale, day, tables, fishing }: MatchTerms): MatchSetting {
  return {
    ...tables,
    fishingFigures: fishing,
    locale,
    trip,
    today: trip.date ?? day,
    packFor: ({ region }) => packs.find((pack) => pack.region === region),
  }
}

/** Waters made ready over the days asked about; one that cannot be predicted is told of and left out. */
export function placesOf(
  { waters, day, days }: MatchTerms,
  onfault: (waterId: string, message: string) => void,
): MatchWater[] {
  return waters.flatMap(({ water, constants }) => {
    const span = waterDays(water, constants, day, days)
    if (span.ok) return [matchWater(water, constants, span.value)]
    onfault(water.id, span.error.message)
    return []
  })
}

/** Every design at every water. Cells come in handfuls. */
export function* answerMatch(question: MatchQuestion, now: () => number): Generator<MatchAnswer> {
  const faults: MatchAnswer[] = []
  const places = placesOf(question, (waterId, message) => faults.push({ kind: 'fault', waterId, message }))
  yield* faults
  const of = question.pots.length * places.length
  let done = 0
  let handful: MatchCell[] = []
  let since = now()
  for (const cell of matchCells(question.pots, places, settingOf(question))) {
    handful.push(cell)
    done += 1
    if (now() - since < HANDFUL_MS) continue
    yield { kind: 'cells', cells: handful, done, of }
    handful = []
    since = now()
  }
  yield { kind: 'cells', cells: handful, done, of }
  yield { kind: 'end' }
}

const HANDFUL_MS = 60

/** Mass of the base ring as it stands [kg]; left out where there is none, or its metal is not known. */
export function ringMass(pot: Pot, materials: Materials): number | undefined {
  const ring = frameMembers(pot, shapeOf(pot.body)).find(({ role }) => role === 'base-ring')
  const perM = ring && barMassPerM(materials, ring.material, ring.diameterM * 1000)
  return ring && perM !== undefined ? perM * ring.pieceLengthM * ring.count : undefined
}

/** The thinnest base ring with which one design holds, at each water. */
export function ringRows(pot: Pot, question: MatchTerms): RingRow[] {
  const { materials, coefficients, locale, trip } = settingOf(question)
  return placesOf(question, () => undefined).map(({ water, predicted }) => {
    const conditions = conditionsAt(water, predicted)
    return {
      waterId: water.id,
      strongestMps: 'missing' in conditions ? undefined : conditions.surfaceCurrentMps,
      answer: ringNeeded({
        pot,
        materials,
        coefficients,
        conditions,
        trip: tripTo(water, trip),
        ...(locale && { locale }),
      }),
    }
  })
}
