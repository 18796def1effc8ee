import type { LifeContext, PartLife } from './judgement'
import { yearsToSection, zincLifeYears } from './metal'
import { perMonthOfUse, type Exposure, type PartUse } from './part-use'
import { monthsSaid } from './wording'

/** Share of its age that a part spent in the water. */
function wetFraction({ immersedDays, ageMonths }: Exposure): number {
  return Math.min(1, perMonthOfUse(immersedDays, ageMonths) / 30.4)
}

/**
 * How a galvanised frame or wire part stands: its zinc first, then the bar down to the section it must keep.
 *
 * Months left = zinc life + steel life − age, at the share of time in the water so far.
 *
 * @param part    coat, bar and time in the water
 * @param context figures
 * @returns the judgement; plain steel has no zinc, and nothing is said of stainless steel
 * @source zinc and steel rates of the sheet; welds and pits go sooner
 */
export function frameLife(part: PartUse, context: LifeContext): PartLife {
  const { sheet } = context
  const inspected = part.inspections.length > 0
  const last = part.inspections.at(-1)
  if (last?.grade === 4)
    return { decision: 'replace', reason: 'The last inspection found a reason to discard it.', inspected }
  const material = part.material ?? ''
  if (/stainless|coated|plastic/.test(material))
    return {
      decision: inspected ? 'fine' : 'watch',
      reason: 'No rate of wear means anything here: look for pits, cuts and rust at the welds.',
      inspected,
    }
  const wet = wetFraction(part.now)
  const coat = /plain|black/.test(material) ? 0 : (part.zincUm ?? sheet.zincCoatUm.value)
  const years = (zincSea: number, zincAir: number, steel: number) => {
    const zinc = coat > 0 ? zincLifeYears(coat, zincSea, zincAir, wet) : 0
    const bar = part.diameterMm ? yearsToSection(part.diameterMm, steel, sheet.steelSectionKept.value) : 0
    return { zinc, all: zinc + bar }
  }
  const low = years(sheet.zincSeaUm.high, sheet.zincAirUm.high, sheet.steelMmPerYear.high)
  const mid = years(sheet.zincSeaUm.value, sheet.zincAirUm.value, sheet.steelMmPerYear.value)
  const high = years(sheet.zincSeaUm.low, sheet.zincAirUm.low, sheet.steelMmPerYear.low)
  const left = (all: number) => Math.max(0, all * 12 - part.now.ageMonths)
  const remainingMonths = { low: left(low.all), mid: left(mid.all), high: left(high.all) }
  const zincMonths = Math.max(0, mid.zinc * 12 - part.now.ageMonths)
  const decision = remainingMonths.mid <= 0 ? 'replace' : zincMonths <= context.aheadMonths ? 'watch' : 'fine'
  const zincSaid = coat > 0 ? (zincMonths > 0 ? 'Zinc still on.' : 'The zinc is likely gone.') : 'No zinc.'
  const reason = `${zincSaid} Life left ${monthsSaid(remainingMonths, context.decimalMark)}, taking ${Math.round(wet * 100)} % of the time in the water.`
  return { decision, reason, remainingMonths, inspected }
}
