import { partsOfDesign } from '@shared/journal/new-pots'
import type { EventDraft } from '@shared/schema/journal'
import type { Crew } from './crew'

const hourMs = 3_600_000
const dayMs = 24 * hourMs
const ropeAgeDays = 760
const seasonDays = 150
const betweenRunsDays = 5

/** Past the soak that the crew is used to, and always over before now. */
const soakMs = 20 * hourMs

const partId = (number: string, kind: string) => `demo-${number}-${kind}`
const potId = (number: string) => `demo-pot-${number}`
const dayOf = (ms: number) => new Date(ms).toISOString().slice(0, 10)
const at = (ms: number) => new Date(ms).toISOString()

/**
 * A season of an invented crew, up to yesterday: pots bought two years ago, set and hauled every few days, looked
 * over, mended, one lost, and the last run still out.
 *
 * The same for the same crew and day. What came up is invented and follows no model.
 *
 * @param now the present; nothing lies after it
 * @returns events in order of time
 */
export function demoSeason(crew: Crew, now: Date): EventDraft[] {
  const nowMs = now.getTime()
  const boughtMs = nowMs - ropeAgeDays * dayMs
  const events: EventDraft[] = [
    {
      kind: 'add-pots',
      at: at(boughtMs),
      pots: crew.owned.map(({ number, design }) => ({
        ...{ pot: potId(number), number, design },
        parts: partsOf(crew, design, dayOf(boughtMs)).map((part) => ({
          ...part,
          id: partId(number, part.kind),
        })),
      })),
    },
    ...crew.prices.map((price): EventDraft => ({ kind: 'price', at: at(boughtMs + dayMs), ...price })),
  ]
  const lost = crew.owned[crew.owned.length - 1]
  const firstMs = nowMs - seasonDays * dayMs
  const runs = Math.floor(seasonDays / betweenRunsDays)
  for (let run = 0; run < runs; run++) {
    const startMs = firstMs + run * betweenRunsDays * dayMs
    const lastRun = run === runs - 1
    crew.owned.forEach((pot, i) => {
      if (pot === lost && run > runs / 2) return
      const common = { pot: potId(pot.number), run: `demo-run-${run + 1}` }
      const setMs = startMs + i * 6 * 60_000
      events.push({ kind: 'set', ...common, at: at(setMs), water: pot.water, bait: 'fish frames' })
      if (pot === lost && run === Math.floor(runs / 2)) {
        events.push({
          kind: 'lose',
          pot: common.pot,
          at: at(setMs + soakMs),
          note: 'Float not seen; searched an hour.',
        })
        return
      }
      // Of the last run one float was missed on the way back.
      if (lastRun && i === 1) return
      events.push({ kind: 'haul', ...common, at: at(setMs + soakMs), ...cameUp(run, i) })
    })
  }
  events.push(...care(crew, firstMs))
  return events.toSorted((a, b) => ((a.at ?? '') < (b.at ?? '') ? -1 : 1))
}

function partsOf(crew: Crew, design: string, day: string) {
  const pot = crew.designs.find((one) => one.id === design)
  return pot ? partsOfDesign(pot, day) : []
}

/** Invented counts that look like a catch: they rise and fall over the season, and differ from pot to pot. */
function cameUp(run: number, pot: number) {
  const wave = 2 + 2 * Math.sin(run / 4) + ((run * 7 + pot * 5) % 3) - 1
  return {
    kept: Math.max(0, Math.round(wave)),
    undersized: (run + pot) % 4,
    female: (run * 3 + pot) % 3,
    baitLeft: (run + pot) % 5 === 0 ? ('none' as const) : ('some' as const),
  }
}

/** Looked over and mended on days between runs. */
function care(crew: Crew, firstMs: number): EventDraft[] {
  const [first, second, third] = crew.owned
  if (!first || !second || !third) return []
  const day = (days: number) => at(firstMs + (days * betweenRunsDays + 3) * dayMs)
  return [
    {
      kind: 'inspect',
      at: day(6),
      part: partId(first.number, 'rope'),
      grade: 2,
      note: 'Fuzzy where it meets the rail.',
    },
    {
      kind: 'inspect',
      at: day(6),
      part: partId(second.number, 'rope'),
      grade: 3,
      note: 'Stiff, and a cut strand.',
    },
    { kind: 'inspect', at: day(6), part: partId(third.number, 'netting'), grade: 1, brokenBars: 2 },
    {
      kind: 'repair',
      at: day(7),
      part: partId(third.number, 'netting'),
      what: 'Two bars knotted',
      brokenBars: 2,
    },
    {
      kind: 'replace',
      at: day(9),
      part: partId(second.number, 'bait-bag'),
      with: {
        ...{ id: `${partId(second.number, 'bait-bag')}-2`, kind: 'bait-bag' },
        installedOn: day(9).slice(0, 10),
      },
      reason: 'failed',
      note: 'Torn open at the seam, bait gone.',
    },
    { kind: 'clean', at: day(10), pot: potId(first.number) },
    {
      kind: 'inspect',
      at: day(14),
      part: partId(third.number, 'frame'),
      grade: 1,
      note: 'Zinc dull, no rust.',
    },
    { kind: 'stock', at: day(2), item: 'bait-bag', counted: 4 },
  ]
}
