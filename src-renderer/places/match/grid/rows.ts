import { ranked, type MatchCell } from '@shared/match/match'
import type { Pot } from '@shared/schema/pot'
import { channelState } from '../cell-figures'

export type Filter = 'all' | 'somewhere' | 'everywhere'

export interface RowQuestion {
  readonly pots: readonly Pot[]
  readonly waterIds: readonly string[]
  readonly cellOf: (potId: string, waterId: string) => MatchCell | undefined
  readonly named: string
  readonly filter: Filter
  /** Water whose best design comes first; undefined keeps the order of the shelf. */
  readonly bestAt: string | undefined
  readonly pinned: ReadonlySet<string>
}

/** The designs to show, in order: pinned ones first, then the best at a water or the order of the shelf. */
export function gridRows({ pots, waterIds, cellOf, named, filter, bestAt, pinned }: RowQuestion): Pot[] {
  const text = named.trim().toLowerCase()
  const shown = pots.filter((pot) => {
    if (text !== '' && !pot.name.toLowerCase().includes(text)) return false
    if (filter === 'all' || pinned.has(pot.id)) return true
    const holding = waterIds.map((id) => {
      const cell = cellOf(pot.id, id)
      return cell !== undefined && channelState(cell) === 'holds'
    })
    return filter === 'somewhere' ? holding.some(Boolean) : holding.every(Boolean)
  })
  const order = bestAt === undefined ? undefined : placesAt(bestAt, shown, cellOf)
  const place = (pot: Pot) => order?.get(pot.id) ?? (order ? Infinity : 0)
  return [...shown].sort(
    (a, b) => Number(pinned.has(b.id)) - Number(pinned.has(a.id)) || place(a) - place(b) || 0,
  )
}

function placesAt(waterId: string, pots: readonly Pot[], cellOf: RowQuestion['cellOf']): Map<string, number> {
  const cells = pots.flatMap(({ id }) => cellOf(id, waterId) ?? [])
  return new Map(ranked(cells).map(({ potId }, place) => [potId, place]))
}
