import type { Outlook } from '@shared/physics/coefficients'
import {
  worstState,
  type Figure,
  type Finding,
  type Source,
  type Spread,
  type Verdict,
  type VerdictState,
} from '@shared/schema/check'

/** Holds with all three outlooks, close when only the cautious one fails, fails when the middle one does. */
export function stateOver(holds: Record<Outlook, boolean>): Exclude<VerdictState, 'cannot-tell'> {
  if (!holds.middle) return 'fails'
  return holds.cautious ? 'holds' : 'close'
}

/** `low`, `mid` and `high` are the figure with the cautious, middle and hopeful coefficients. */
export const spreadOf = <T>(values: Record<Outlook, T>, figure: (value: T) => number): Spread => ({
  low: figure(values.cautious),
  mid: figure(values.middle),
  high: figure(values.hopeful),
})

export const isFiniteSpread = (spread: Spread): boolean =>
  Number.isFinite(spread.low) && Number.isFinite(spread.mid) && Number.isFinite(spread.high)

/** A verdict from its findings, with the figures that are known. */
export function verdictOf(
  findings: readonly Finding[],
  figures: Readonly<Record<string, Figure | undefined>> = {},
): Verdict {
  const known: Record<string, Figure> = {}
  for (const [name, figure] of Object.entries(figures)) if (figure !== undefined) known[name] = figure
  return {
    state: worstState(findings.map((finding) => finding.state)),
    findings: [...findings],
    figures: known,
  }
}

/** A finding that names what would have to be known. */
export function cannotTell(rule: string, question: string, missing: string, part?: Finding['part']): Finding {
  return {
    rule,
    state: 'cannot-tell',
    ...(part && { part }),
    what: `Cannot tell ${question} without ${missing}.`,
    missing,
    standing: 'engineering',
  }
}

export const joined = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`

/** Sources of the engineering findings, as they are shown beside them. */
export const sources = {
  holding: {
    title: 'Balance of drag, rope, weight and grip on the bottom; netting drag Aarsnes, Rudi & Loland 1990',
    publisher: 'As restated in Cheng et al. 2020, Aquaculture Environment Interactions 12:361-376',
    date: '2020',
    confidence: 'derived',
  },
  line: {
    title: 'Balance of a rope and float in a current; Berteaux, Buoy Engineering, 1976',
    date: '1976',
    confidence: 'derived',
  },
  length: {
    title: 'Depth, half a wave and rope in hand; common practice',
    confidence: 'derived',
  },
  rope: {
    title: "Fisherman's Workbook, tables of rope; cordage guidelines, factor 5 to 12",
    publisher: 'Prado & Dremiere, FAO',
    date: '1990',
    confidence: 'memory',
  },
  person: {
    title: 'Manual handling guidance L23 and INDG143, lifting filter',
    publisher: 'Health and Safety Executive',
    confidence: 'read',
  },
  waves: {
    title:
      'Breaking of waves by depth and by steepness; Coastal Engineering Manual EM 1110-2-1100; Miche 1944',
    confidence: 'memory',
  },
  grip: { title: 'Common practice in hauling by hand', confidence: 'memory' },
  size: { title: 'Sizes and weights of the parts', confidence: 'derived' },
} as const satisfies Record<string, Source>
