import { partUseAt } from '@shared/journal/exposure'
import type { LockerState } from '@shared/journal/locker-state'
import { compareNumbers } from '@shared/journal/run'
import type { JournalEvent } from '@shared/schema/journal'
import Papa from 'papaparse'
import type { DueItem } from './due'
import type { ShoppingList } from './shopping'

/* Tables for a spreadsheet. Text that a spreadsheet would run as a formula is quoted as text. */

function csv(rows: readonly Record<string, string | number | undefined>[]): string {
  return `${Papa.unparse([...rows], { escapeFormulae: true, newline: '\n' })}\n`
}

const rounded = (value: number) => Math.round(value * 10) / 10

/** Every part ever put on a pot, with what it has been through. */
export function partsCsv(state: LockerState, nowMs: number): string {
  const rows = Object.values(state.parts).flatMap((part) => {
    const pot = state.pots[part.pot]
    if (!pot) return []
    const { now } = partUseAt(part, pot, nowMs)
    const { part: installed } = part
    const row = {
      number: pot.number,
      part: installed.kind,
      material: installed.material,
      diameterMm: installed.diameterMm,
      lengthM: installed.lengthM,
      cost: installed.cost,
      installedOn: installed.installedOn,
      status: part.status,
      removedOn: part.removedAt?.slice(0, 10),
      ageMonths: rounded(now.ageMonths),
      hauls: now.hauls,
      daysInWater: rounded(now.immersedDays),
      lastInspected: part.inspections.at(-1)?.on.slice(0, 10),
      lastGrade: part.inspections.at(-1)?.grade,
    }
    return [row]
  })
  return csv(rows.sort((a, b) => compareNumbers(a.number, b.number) || a.part.localeCompare(b.part)))
}

/** The whole history, a line an event; what an event says stands in one cell as it was written. */
export function eventsCsv(events: readonly JournalEvent[], state: LockerState): string {
  return csv(
    events.map((event) => {
      const { id, at, machine, seq, kind, ...rest } = event
      const said = { ...rest, version: undefined }
      const pot =
        'pot' in said && typeof said.pot === 'string'
          ? said.pot
          : 'part' in said && said.part
            ? state.parts[said.part]?.pot
            : undefined
      return {
        at,
        kind,
        number: pot === undefined ? '' : state.pots[pot]?.number,
        said: JSON.stringify(said),
        machine,
        seq,
        id,
      }
    }),
  )
}

export function dueCsv(due: readonly DueItem[]): string {
  return csv(
    due.map((item) => ({
      by: item.by,
      do: item.action,
      number: item.number,
      part: item.report?.part.part.kind ?? 'pot',
      why: item.reason,
    })),
  )
}

export function shoppingCsv(list: ShoppingList): string {
  return csv(
    list.lines.map(({ item, unit, needed, inHand, toBuy, coils, cost }) => ({
      item,
      unit,
      needed: rounded(needed),
      inHand: rounded(inHand),
      toBuy: rounded(toBuy),
      coils,
      cost: cost === undefined ? undefined : Math.round(cost * 100) / 100,
    })),
  )
}
