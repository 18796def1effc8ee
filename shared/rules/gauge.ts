import { firstDay, lastDay } from '@shared/schema/rule-fields'
import type { RulePack, RuleSource } from '@shared/schema/rule-pack'
import type { BagLimit, SizeLimit, Species } from '@shared/schema/rule-species'
import type { Trip } from '@shared/schema/trip'
import { toBase } from '@shared/schema/rule-units'
import type { DecimalMark } from '@shared/units/locale'
import { inSeason } from './calendar'
import { printedLimit } from './printed'

export type Sex = 'male' | 'female'

/** A species as the Gauge shows it: how to measure it and what may be kept, at one place and date. */
export interface GaugeEntry {
  readonly species: Species
  readonly sizes: readonly SizeLimit[]
  readonly bags: readonly BagLimit[]
  readonly source: RuleSource | undefined
}

/**
 * Species of a region with the limits that can apply on a trip. An unknown zone or date leaves every limit in that
 * could apply, so the entry shows them all.
 *
 * @param pack the region's rules
 * @param trip zone and date, where they are known
 */
export function gaugeEntries(pack: RulePack, trip: Pick<Trip, 'zone' | 'date'> = {}): GaugeEntry[] {
  const fits = (one: Narrowed) => fitsTrip(one, trip)
  return pack.species
    .filter((one) => fits(one) && fitsDates(one, trip.date))
    .map((one) => ({
      species: one,
      sizes: one.sizes.filter(fits),
      bags: one.bags.filter(fits),
      source: pack.sources[one.sources[0] ?? 0],
    }))
}

interface Narrowed {
  readonly zones?: readonly string[] | undefined
  readonly seasons?: readonly { readonly from: string; readonly to: string }[] | undefined
}

function fitsTrip({ zones, seasons }: Narrowed, { zone, date }: Pick<Trip, 'zone' | 'date'>): boolean {
  if (zones && zone !== undefined && !zones.includes(zone)) return false
  return !(seasons && date !== undefined && !seasons.some((season) => inSeason(date, season)))
}

function fitsDates({ from, to }: Species, date: string | undefined): boolean {
  if (date === undefined) return true
  return (from === undefined || date >= firstDay(from)) && (to === undefined || date <= lastDay(to))
}

export interface GaugeVerdict {
  readonly state: 'keep' | 'return' | 'measure-again' | 'cannot-tell'
  readonly says: string
}

// A calliper on a live crab is good to about a millimetre.
const MEASURE_AGAIN_MM = 1

/**
 * Whether a crab of a measured size may be kept.
 *
 * @param entry       the species and its limits here and now
 * @param measuredMm  size, measured the way the entry says [mm], > 0
 * @param crab        its sex, and whether it carries eggs or has a soft shell, where that is known
 * @param decimalMark of the sentence
 * @returns keep, return, measure again (within 1 mm of a limit), or what is not known
 */
export function gaugeVerdict(
  entry: GaugeEntry,
  measuredMm: number,
  crab: { readonly sex?: Sex; readonly eggBearing?: boolean; readonly softShell?: boolean } = {},
  decimalMark: DecimalMark = '.',
): GaugeVerdict {
  const { keep } = entry.species
  if (crab.eggBearing && keep.eggBearing === 'no')
    return { state: 'return', says: 'It carries eggs: put it back.' }
  if (crab.softShell && keep.softShell === 'no')
    return { state: 'return', says: 'Its shell is soft: put it back.' }
  if (crab.sex && keep[crab.sex] === 'no')
    return { state: 'return', says: `No ${crab.sex}s are kept here: put it back.` }
  const sexes: readonly Sex[] = crab.sex ? [crab.sex] : ['male', 'female']
  const mayKeep = sexes.filter((sex) => keep[sex] !== 'no')
  if (mayKeep.length === 0) return { state: 'return', says: 'None is kept here: put it back.' }
  const bySize = mayKeep.map((sex) => sizeVerdict(entry.sizes, measuredMm, sex, decimalMark))
  const [first] = bySize
  if (!first || bySize.some((one) => one.state !== first.state))
    return { state: 'cannot-tell', says: 'The limit differs by sex: tell male from female first.' }
  if (first.state !== 'keep') return first
  return sexOpen(entry.species, crab, mayKeep) ?? eggsOpen(crab, keep.eggBearing, mayKeep) ?? first
}

/** Of a right size; the sex has still to be known where one sex goes back. */
function sexOpen(
  { keep }: Species,
  crab: { readonly sex?: Sex },
  mayKeep: readonly Sex[],
): GaugeVerdict | undefined {
  if (!crab.sex && mayKeep.length === 1)
    return {
      state: 'cannot-tell',
      says: `It is large enough. Only ${mayKeep[0]}s are kept: tell male from female first.`,
    }
  if (mayKeep.some((sex) => keep[sex] === 'not-found'))
    return {
      state: 'cannot-tell',
      says: 'The size is right. No rule on the sex was found; that does not mean there is none.',
    }
  return undefined
}

function eggsOpen(
  crab: { readonly eggBearing?: boolean },
  rule: Species['keep']['eggBearing'],
  mayKeep: readonly Sex[],
): GaugeVerdict | undefined {
  if (!mayKeep.includes('female') || !crab.eggBearing || rule !== 'not-found') return undefined
  return { state: 'cannot-tell', says: 'No rule on crabs with eggs was found: put it back to be safe.' }
}

function sizeVerdict(
  sizes: readonly SizeLimit[],
  measuredMm: number,
  sex: Sex,
  decimalMark: DecimalMark,
): GaugeVerdict {
  const limits = sizes.filter((size) => size.sex === undefined || size.sex === sex)
  if (limits.length === 0)
    return { state: 'cannot-tell', says: 'No size limit was found. That does not mean there is none.' }
  const bounds = limits.flatMap(({ min, max, unit }) => [
    ...(min === undefined
      ? []
      : [
          {
            over: measuredMm - toBase(min, unit),
            says: `smaller than ${printedLimit(min, unit, decimalMark)}`,
          },
        ]),
    ...(max === undefined
      ? []
      : [
          {
            over: toBase(max, unit) - measuredMm,
            says: `larger than ${printedLimit(max, unit, decimalMark)}`,
          },
        ]),
  ])
  const near = bounds.find((bound) => Math.abs(bound.over) <= MEASURE_AGAIN_MM)
  const broken = bounds.find((bound) => bound.over < -MEASURE_AGAIN_MM)
  if (broken) return { state: 'return', says: `It is ${broken.says}: put it back.` }
  if (near)
    return {
      state: 'measure-again',
      says: 'It is within 1 mm of the limit: measure again, and put it back if in doubt.',
    }
  return { state: 'keep', says: 'The size is right.' }
}
