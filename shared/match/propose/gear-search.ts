import { massProperties } from '@shared/design/mass-properties'
import type { Verdict, VerdictName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import { barSizesMm } from '@shared/verdicts/single-changes'
import { floatShows } from '@shared/verdicts/float-shows'
import { holdsBottom } from '@shared/verdicts/holds-bottom'
import { prepare, type Prepared } from '@shared/verdicts/prepared'
import { withBaseRing } from '../ring-needed'
import { mayHold, mayShow } from './quick-tests'
import { failing, passes } from './acceptance'
import { checkAt, inputAt, tradeCheckAt, type ProposeRequest } from './request'

/** What is to be made small: mass or cost; undefined where it cannot be told. */
export type Objective = (pot: Pot) => number | undefined

export interface Found {
  readonly pot: Pot
  readonly value: number
}

// Rope over the greatest depth: common practice runs from a little slack to twice the depth and more.
const ropeOverDepth = [1.1, 1.25, 1.5, 1.75, 2, 2.5, 3] as const
const handlingM = 2

/**
 * The smallest base ring, rope and float with which a fitted shape passes everywhere.
 *
 * Tackle first: for every rope the smallest float that shows. Then, cheapest tackle first, base rings from thin to
 * thick until one holds; a tackle whose thinnest ring is no better than the best so far is skipped, and so is
 * every ring beyond the best, since value grows with the bar.
 *
 * @param fitted    a shape fitted out for rules and crabs
 * @param request   places, setting and limits
 * @param objective what is to be made small
 * @param best      value to beat
 * @yields once for every tackle, so that whoever asks can show progress or stop
 * @returns the best found, or undefined where none passes or beats `best`
 */
export function* searchGear(
  fitted: Pot,
  request: ProposeRequest,
  objective: Objective,
  best: number,
): Generator<void, Found | undefined> {
  const tackles: Found[] = []
  for (const pot of roped(fitted, request)) {
    yield
    const shown = withSmallestFloat(pot, request, objective)
    const thinnest = shown && objective(withBaseRing(shown, barSizesMm[0]))
    if (shown && thinnest !== undefined) tackles.push({ pot: shown, value: thinnest })
  }
  tackles.sort((a, b) => a.value - b.value)

  let found: Found | undefined
  for (const tackle of tackles) {
    if (tackle.value >= Math.min(best, found?.value ?? Infinity)) break
    yield
    const better = withThinnestRing(tackle.pot, request, objective, Math.min(best, found?.value ?? Infinity))
    if (better) found = better
  }
  return found
}

/** The fitted shape on every rope that the parts list has, in every sensible length. */
function roped(fitted: Pot, { places, setting }: ProposeRequest): Pot[] {
  const { rope } = fitted
  if (!rope) return []
  const deepest = Math.max(...places.map(({ water, predicted }) => water.depthM + (predicted.highM ?? 0)))
  const lengths = [...new Set(ropeOverDepth.map((factor) => Math.ceil(deepest * factor + handlingM)))]
  return setting.materials.ropes
    .filter(({ material }) => material === rope.material)
    .flatMap(({ diameterMm }) =>
      lengths.map((lengthM) => ({ ...fitted, rope: { ...rope, diameterMm, lengthM } })),
    )
}

/** The float of least value that shows everywhere and is legal. */
function withSmallestFloat(pot: Pot, request: ProposeRequest, objective: Objective): Pot | undefined {
  const { float } = pot
  if (!float) return undefined
  const { colours, pattern, reflective } = float
  const choices = request.setting.materials.floats
    .map(({ shape, diameterMm, lengthMm = diameterMm, massKg, material }): Pot => {
      const common = {
        diameterMm,
        massKg,
        material,
        colours,
        pattern,
        ...(reflective !== undefined && { reflective }),
      }
      return { ...pot, float: shape === 'sphere' ? { shape, ...common } : { shape, lengthMm, ...common } }
    })
    .map((candidate) => ({ candidate, value: objective(candidate) ?? Infinity }))
    .sort((a, b) => a.value - b.value)
  return choices.find(
    ({ candidate }) =>
      passesEverywhere(candidate, request, 'floatShows', mayShow, floatShows) &&
      isLegalEverywhere(candidate, request),
  )?.candidate
}

function isLegalEverywhere(pot: Pot, { places, setting, waived = [] }: ProposeRequest): boolean {
  return (
    waived.includes('legal') ||
    places.every((place) => passes('legal', tradeCheckAt(pot, place, setting).verdicts.legal))
  )
}

function withThinnestRing(
  pot: Pot,
  request: ProposeRequest,
  objective: Objective,
  best: number,
): Found | undefined {
  const { places, setting, mostKg = Infinity, waived = [] } = request
  for (const bar of barSizesMm) {
    const candidate = withBaseRing(pot, bar)
    const value = objective(candidate)
    const { dryMassKg, baitKg } = massProperties(candidate, setting.materials)
    if (value === undefined || value >= best || dryMassKg + baitKg > mostKg) return undefined
    if (!passesEverywhere(candidate, request, 'holdsBottom', mayHold, holdsBottom)) continue
    // A thicker ring only makes what is left (lifting, stowing) worse.
    return places.every((place) => failing(checkAt(candidate, place, setting), waived).length === 0)
      ? { pot: candidate, value }
      : undefined
  }
  return undefined
}

/** Whether a pot passes one verdict at every place; the quick test goes first at all of them. */
function passesEverywhere(
  pot: Pot,
  { places, setting, waived = [] }: ProposeRequest,
  name: VerdictName,
  quick: (prepared: Prepared) => boolean,
  verdictOf: (prepared: Prepared) => Verdict,
): boolean {
  if (waived.includes(name)) return true
  const prepared = places.map((place) => prepare(inputAt(pot, place, setting)))
  return prepared.every(quick) && prepared.every((one) => passes(name, verdictOf(one)))
}
