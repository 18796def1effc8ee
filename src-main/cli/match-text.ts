import { ranked, type MatchCell } from '@shared/match/match'
import type { VerdictState } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { Water } from '@shared/schema/water'
import { formatMargin, formatQuantity, type UnitSystem } from '@shared/units/display'

/** The ranking at each water: how much of the tide a pot works, its margin, the ring it lacks, and why. */
export function matchText(
  pots: readonly Pot[],
  waters: readonly Water[],
  cells: readonly MatchCell[],
  units: UnitSystem,
): string {
  const names = new Map(pots.map(({ id, name }) => [id, name]))
  const lines = waters.flatMap(({ id, name }) => [
    name,
    ...ranked(cells.filter(({ waterId }) => waterId === id)).flatMap((cell) => [
      `  ${stateNames[cell.overall].padEnd(11)}  ${names.get(cell.potId) ?? cell.potId}: ${figures(cell, units)}`,
      `               ${cell.reason}`,
    ]),
    '',
  ])
  return `${lines.join('\n')}\n`
}

const stateNames: Record<VerdictState, string> = {
  holds: 'holds',
  close: 'close',
  fails: 'fails',
  'cannot-tell': 'cannot tell',
}

function figures(cell: MatchCell, units: UnitSystem): string {
  const { bothShare, marginMps, ringMassNeededKg, states } = cell
  return [
    bothShare === undefined ? '' : `works ${percent(bothShare)} of the time`,
    marginMps === undefined ? '' : `margin ${formatMargin(marginMps, 'm/s', units)}`,
    ringMassNeededKg === undefined || ringMassNeededKg === 0
      ? ''
      : `${formatQuantity(ringMassNeededKg, 'kg', units)} more in the base ring`,
    `legal: ${stateNames[states.legal]}`,
  ]
    .filter(Boolean)
    .join(', ')
}

/** Never rounded up to all of the time, nor down to none. */
function percent(share: number): string {
  if (share === 0 || share === 1) return `${share * 100} %`
  return `${Math.min(99, Math.max(1, Math.round(share * 100)))} %`
}
