import { group } from 'd3-array'
import { compareNumbers } from '@shared/journal/run'
import { inspectionPoints, type InspectionPoints } from './inspection-points'
import type { PartReport } from './locker-lives'

/** What to look at on one pot, part by part. */
export interface InspectionSheet {
  readonly pot: string
  readonly number: string
  readonly parts: readonly SheetLine[]
}

interface SheetLine extends InspectionPoints {
  readonly part: string
  readonly lastInspected?: string
  readonly report: PartReport
}

/**
 * Inspection sheets of all pots from the parts that are on them.
 *
 * @param reports the parts with how they stand
 * @returns one sheet a pot, by number
 */
export function inspectionSheets(reports: readonly PartReport[]): InspectionSheet[] {
  const byPot = group(reports, (report) => report.pot)
  return [...byPot]
    .map(([pot, parts]) => ({ pot: pot.id, number: pot.number, parts: parts.map(sheetLine) }))
    .sort((a, b) => compareNumbers(a.number, b.number))
}

function sheetLine(report: PartReport): SheetLine {
  const { part, inspections } = report.part
  const last = inspections.at(-1)
  return {
    ...inspectionPoints[part.kind],
    part: part.id,
    ...(last ? { lastInspected: last.on.slice(0, 10) } : {}),
    report,
  }
}
