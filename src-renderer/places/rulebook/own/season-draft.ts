/* A season as the form holds it: two days of any year, each filled in by and by. */

export interface DayDraft {
  readonly day?: number | undefined
  readonly month?: number | undefined
}

export interface SeasonDraft {
  readonly from: DayDraft
  readonly to: DayDraft
}

interface Season {
  readonly from: string
  readonly to: string
}

export const emptySeason: SeasonDraft = { from: {}, to: {} }

export const seasonDrafts = (seasons: readonly Season[] | undefined): SeasonDraft[] =>
  (seasons ?? []).map(({ from, to }) => ({ from: dayDraft(from), to: dayDraft(to) }))

const dayDraft = (day: string): DayDraft => ({ month: Number(day.slice(0, 2)), day: Number(day.slice(3)) })

/** The seasons; undefined while a day is left out, or is none of the calendar. */
export function seasonsOf(drafts: readonly SeasonDraft[]): Season[] | undefined {
  const seasons = drafts.flatMap(({ from, to }) => {
    const [first, last] = [dayOf(from), dayOf(to)]
    return first && last ? [{ from: first, to: last }] : []
  })
  return seasons.length === drafts.length ? seasons : undefined
}

function dayOf({ day, month }: DayDraft): string | undefined {
  if (day === undefined || month === undefined) return undefined
  // In a leap year, so that 29 February is a day.
  const at = new Date(Date.UTC(2024, month - 1, day))
  return at.getUTCMonth() === month - 1 ? at.toISOString().slice(5, 10) : undefined
}
