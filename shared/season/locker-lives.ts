import { partUseAt } from '@shared/journal/exposure'
import type { LockerState, PartState, PotState } from '@shared/journal/locker-state'
import { wetDaysAt } from '@shared/journal/passage'
import type { DecimalMark } from '@shared/units/locale'
import { sunAt, type WearAssumptions } from '@shared/wear/assumptions'
import { foulingFactor } from '@shared/wear/fouling'
import type { LifeContext, MendAt, PartLife } from '@shared/wear/judgement'
import type { LifeBelief } from '@shared/wear/own-record'
import { partLife } from '@shared/wear/part-life'
import type { Exposure } from '@shared/wear/part-use'
import { mendAtFor } from './legal-crab'
import { likeness, ownBelief, ownLives } from './own-lives'
import { shareOf } from './rope-share'
import type { Surroundings } from './surroundings'

/** What the judgement of a whole locker depends on. */
export interface LockerContext {
  readonly nowMs: number
  readonly sheet: WearAssumptions
  /** Months that the gear must last, as the season ahead. */
  readonly aheadMonths: number
  /** What designs and places say; usual figures are taken for what they leave out. */
  readonly around?: Surroundings
  /** Of the sentences; a full stop unless said. */
  readonly decimalMark?: DecimalMark
}

/** A fitted part with what it has been through and how it stands. */
export interface PartReport {
  readonly part: PartState
  readonly pot: PotState
  readonly use: Exposure
  readonly life: PartLife
  /** When its broken bars are mended, for netting of known mesh where the crab is known. */
  readonly mendAt?: MendAt
  /** What is believed of the lives of parts like it, the user's own record included. */
  readonly belief: LifeBelief
}

/**
 * How every fitted part of every pot in use stands.
 *
 * @param state   the locker
 * @param context time, figures and places
 * @returns reports in the order of the pots' numbers as kept
 */
export function lockerLives(state: LockerState, context: LockerContext): PartReport[] {
  const lives = ownLives(state, context.sheet, context.nowMs)
  return Object.values(state.pots)
    .filter((pot) => pot.status !== 'retired' && pot.status !== 'lost')
    .flatMap((pot) => {
      const place = placeOf(pot, context)
      return pot.parts.flatMap((id): PartReport[] => {
        const part = state.parts[id]
        if (!part) return []
        const use = partUseAt(part, pot, context.nowMs)
        const record = lives.get(likeness(part))?.record
        const belief = ownBelief(part, record, place.sheet)
        const needs = needsOf(part, pot, context.around)
        const own = { belief, ownFailures: record?.failed.length ?? 0 }
        const { aheadMonths, decimalMark } = context
        const life = partLife(use, {
          ...{ ...place, ...needs, ...own, aheadMonths },
          ...(decimalMark ? { decimalMark } : {}),
        })
        return [{ part, pot, use: use.now, life, belief, ...(needs.mendAt ? { mendAt: needs.mendAt } : {}) }]
      })
    })
}

/** The figures of the place where a pot is used. */
function placeOf(pot: PotState, { sheet, around }: LockerContext) {
  const water = pot.water === undefined ? undefined : around?.waters[pot.water]
  const waterC = pot.temperatureC ?? water?.temperatureC
  return { sheet: sheetAt(sheet, water?.latitudeDeg), ...(waterC === undefined ? {} : { waterC }) }
}

/** What its load asks of a rope, and its crab of netting. */
function needsOf(
  { part }: PartState,
  pot: PotState,
  around: Surroundings | undefined,
): Pick<LifeContext, 'requiredShare' | 'mendAt'> {
  const design = around?.designs[pot.design]
  if (part.kind === 'rope') return design?.rope ? { requiredShare: shareOf(design.rope, part) } : {}
  const crab = (pot.water === undefined ? undefined : around?.waters[pot.water]?.crab) ?? around?.crab
  const barMm = part.barLengthMm ?? design?.barMm
  return part.kind === 'netting' && crab && barMm !== undefined ? { mendAt: mendAtFor(crab, barMm) } : {}
}

/** The sheet with the sun of a place, unless the user set it. */
function sheetAt(sheet: WearAssumptions, latitudeDeg: number | undefined): WearAssumptions {
  const sun = sheet.sunKlyPerYear
  if (latitudeDeg === undefined || sun.standing === 'user') return sheet
  return { ...sheet, sunKlyPerYear: { ...sun, value: sunAt(latitudeDeg) } }
}

/** What wear changes in a check of the pot: the rope's strength left and the growth on the netting. */
export function wearOfPot(
  reports: readonly PartReport[],
  pot: PotState,
  nowMs: number,
  temperatureC?: number,
): { ropeStrengthLeft?: number; foulingFactor: number } {
  const own = reports.filter((report) => report.pot.id === pot.id)
  const strengths = own.flatMap(({ part, life }) =>
    part.part.kind === 'rope' && life.strengthLeft ? [life.strengthLeft.mid] : [],
  )
  const wire = own.some(
    ({ part }) => part.part.kind === 'netting' && (part.part.material ?? '').startsWith('wire'),
  )
  const growth = foulingFactor(
    wetDaysAt(pot, nowMs),
    wire ? 'wire' : 'thin-twine',
    pot.temperatureC ?? temperatureC,
  )
  return {
    ...(strengths.length > 0 ? { ropeStrengthLeft: Math.min(...strengths) } : {}),
    foulingFactor: growth,
  }
}
