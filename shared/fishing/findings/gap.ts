import type { Finding, Spread } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { FishingAssumptions } from '../assumptions'
import { gapSize50, suitedGapHeight } from '../gap-size'
import type { LegalSize } from '../legal-size'
import { speciesBySlug, type CrabSpecies } from '../species'
import { displayUnit, formatQuantity, significant, toDisplay } from '@shared/units/display'
import type { ReaderLocale } from '@shared/units/locale'
import { stateOf } from './state-of'

/** A crab this share of the legal size is plainly undersized and should get out. */
const plainlyUndersized = 0.85

/**
 * Whether plainly undersized crabs fit the largest gap, and whether legal ones stay. A gap that suits the crab
 * says nothing about what the rules ask.
 */
export function gapFindings(
  pot: Pot,
  legal: LegalSize,
  sheet: FishingAssumptions,
  locale: ReaderLocale,
): readonly Finding[] {
  const species = speciesBySlug(legal.species)
  const common = { part: 'escape-gaps', standing: 'engineering' } as const
  const rule = `fishes:undersized-fits-gap:${legal.species}`
  const cannotTell = (missing: string): readonly Finding[] => [
    {
      ...common,
      rule,
      state: 'cannot-tell',
      what: `Cannot tell whether undersized crabs get out without ${missing}.`,
      missing,
    },
  ]
  if (!pot.escapeGaps) return cannotTell('the escape gaps')
  if (!species) return cannotTell(`the body proportions of ${legal.name ?? legal.species}`)
  if (pot.escapeGaps.length === 0) return [noGap(rule, legal, species, locale)]
  const sizes = pot.escapeGaps
    .map((gap) => gapSize50(gap, legal, species))
    .filter((size) => size !== undefined)
  const [first, ...rest] = sizes
  if (!first) return cannotTell(`the proportions of ${species.common} for this kind of gap`)
  const size50 = rest.reduce((a, b) => (b.mid > a.mid ? b : a), first)
  const source = { title: species.source, confidence: species.confidence }
  return [
    { ...common, ...undersized(size50, legal, species, locale), rule, source },
    { ...common, ...legalStays(size50, legal, sheet), rule: `fishes:legal-stays:${legal.species}`, source },
  ]
}

type Judged = Pick<Finding, 'state' | 'what' | 'actual' | 'limit' | 'margin' | 'unit'>

function undersized(size50: Spread, legal: LegalSize, species: CrabSpecies, locale: ReaderLocale): Judged {
  const limit = plainlyUndersized * legal.sizeMm
  const state = stateOf(size50.low - limit, size50.mid - limit)
  const height = suitedGapHeight(legal, species)
  const advice = height
    ? ` A gap about ${formatQuantity(height.mid, 'mm', locale)} high suits this size.`
    : ''
  const [low, mid, high] = [size50.low, size50.mid, size50.high].map((mm) =>
    significant(toDisplay(mm, 'mm', locale.units), locale.decimalMark),
  )
  const half = `Half of the crabs of ${mid} ${displayUnit('mm', locale.units).symbol} (${low} to ${high}) that try the gap stay in.`
  return {
    state,
    what: state === 'holds' ? half : `${half} Many undersized ones cannot leave.${advice}`,
    actual: size50.mid,
    limit,
    margin: size50.mid - limit,
    unit: 'mm',
  }
}

/** In trials gaps with half staying right at the legal size kept the legal catch: one selection range is allowed. */
function legalStays(size50: Spread, legal: LegalSize, sheet: FishingAssumptions): Judged {
  const limit = legal.sizeMm * (1 + sheet.selectionShare.value)
  const state = stateOf(limit - size50.high, limit - size50.mid)
  return {
    state,
    what:
      state === 'holds'
        ? 'Legal crabs stay behind the gap.'
        : 'Crabs just over the legal size may leave by the gap.',
    actual: size50.mid,
    limit,
    margin: limit - size50.mid,
    unit: 'mm',
  }
}

function noGap(rule: string, legal: LegalSize, species: CrabSpecies, locale: ReaderLocale): Finding {
  const height = suitedGapHeight(legal, species)
  const advice = height
    ? ` A gap about ${formatQuantity(height.mid, 'mm', locale)} high, low and level, suits this size.`
    : ''
  return {
    rule,
    state: 'fails',
    part: 'escape-gaps',
    what: `There is no escape gap, so undersized crabs stay in.${advice}`,
    actual: 0,
    limit: 1,
    unit: 'gaps',
    standing: 'engineering',
    source: { title: species.source, confidence: species.confidence },
  }
}
