import { ranked, type MatchCell } from '@shared/match/match'
import type { Pot } from '@shared/schema/pot'
import type { Water } from '@shared/schema/water'
import { formatMargin, formatQuantity } from '@shared/units/display'
import type { ReaderLocale } from '@shared/units/locale'
import { sayState } from '@shared/verdicts/verdict-words'

/** The ranking at each water: how much of the tide a pot works, its margin, the ring it lacks, and why. */
export function matchText(
  pots: readonly Pot[],
  waters: readonly Water[],
  cells: readonly MatchCell[],
  locale: ReaderLocale,
): string {
  const names = new Map(pots.map(({ id, name }) => [id, name]))
  const lines = waters.flatMap(({ id, name }) => [
    name,
    ...ranked(cells.filter(({ waterId }) => waterId === id)).flatMap((cell) => [
      `  ${sayState(cell.overall).padEnd(11)}  ${names.get(cell.potId) ?? cell.potId}: ${figures(cell, locale)}`,
      `               ${cell.reason}`,
    ]),
    '',
  ])
  return `${lines.join('\n')}\n${caution}\n`
}

const caution =
  'Shares, margins and masses are reckoned with the cautious coefficients; sentences give what is likely. Local rules and licensed practice decide.'

function figures(cell: MatchCell, locale: ReaderLocale): string {
  const { bothShare, marginMps, ringMassNeededKg, states } = cell
  return [
    bothShare === undefined ? '' : `holds and shows ${percent(bothShare)} of the time`,
    marginMps === undefined ? '' : `margin ${formatMargin(marginMps, 'm/s', locale)}`,
    ringText(ringMassNeededKg, locale),
    `legal: ${sayState(states.legal)}`,
  ]
    .filter(Boolean)
    .join(', ')
}

// Beyond this no ring is a sensible answer.
const heaviestRingKg = 60

function ringText(kg: number | undefined, locale: ReaderLocale): string {
  if (kg === undefined || kg === 0) return ''
  return kg > heaviestRingKg ? 'no ring does' : `${formatQuantity(kg, 'kg', locale)} more in the base ring`
}

/** Never rounded up to all of the time, nor down to none. */
function percent(share: number): string {
  if (share === 0 || share === 1) return `${share * 100} %`
  return `${Math.min(99, Math.max(1, Math.round(share * 100)))} %`
}
