import * as v from 'valibot'

/* What a check returns, `potwright/check`. */

const verdictStates = ['holds', 'close', 'fails', 'cannot-tell'] as const
export type VerdictState = (typeof verdictStates)[number]

export const verdictNames = ['legal', 'holdsBottom', 'floatShows', 'lifts', 'fishes', 'stows'] as const
export type VerdictName = (typeof verdictNames)[number]

/** The part a finding is about, so that the view can mark it. */
export const partNames = [
  'body',
  'frame',
  'base-ring',
  'middle-ring',
  'top-ring',
  'strut',
  'cross-bar',
  'ballast',
  'netting',
  'entrances',
  'doors',
  'chafe',
  'bait',
  'escape-gaps',
  'release',
  'bridle',
  'rope',
  'float',
  'marks',
  'catch',
  'trip',
  'water',
] as const
export type PartName = (typeof partNames)[number]

const standings = ['law', 'advice', 'proposal', 'engineering'] as const
export type Standing = (typeof standings)[number]

export const confidences = ['read', 'memory', 'conflicting', 'user', 'derived'] as const
export type Confidence = (typeof confidences)[number]

const source = v.strictObject({
  title: v.string(),
  publisher: v.optional(v.string()),
  date: v.optional(v.string()),
  url: v.optional(v.string()),
  checkedOn: v.optional(v.string()),
  confidence: v.optional(v.picklist(confidences)),
})

const scalar = v.union([v.number(), v.string(), v.boolean()])

const finding = v.strictObject({
  rule: v.string(),
  state: v.picklist(verdictStates),
  part: v.optional(v.picklist(partNames)),
  /** One sentence for a person: what, how much, what to do. */
  what: v.string(),
  actual: v.optional(scalar),
  limit: v.optional(scalar),
  /** Limit minus value or value minus limit, positive when met, in `unit`. */
  margin: v.optional(v.number()),
  unit: v.optional(v.string()),
  /** For cannot-tell: what would have to be known. */
  missing: v.optional(v.string()),
  standing: v.picklist(standings),
  source: v.optional(source),
})

const spread = v.strictObject({ low: v.number(), mid: v.number(), high: v.number() })

const figure = v.union([v.number(), spread, v.array(v.number())])

const verdict = v.strictObject({
  state: v.picklist(verdictStates),
  findings: v.array(finding),
  figures: v.optional(v.record(v.string(), figure)),
})

export const CheckSchema = v.strictObject({
  format: v.literal('potwright/check'),
  version: v.literal(1),
  overall: v.picklist(verdictStates),
  verdicts: v.strictObject({
    legal: verdict,
    holdsBottom: verdict,
    floatShows: verdict,
    lifts: verdict,
    fishes: verdict,
    stows: verdict,
  }),
})

export type Source = v.InferOutput<typeof source>
export type Finding = v.InferOutput<typeof finding>
export type Spread = v.InferOutput<typeof spread>
export type Figure = v.InferOutput<typeof figure>
export type Verdict = v.InferOutput<typeof verdict>
export type Check = v.InferOutput<typeof CheckSchema>

const severity: Record<VerdictState, number> = { fails: 3, 'cannot-tell': 2, close: 1, holds: 0 }

/** The worst of several states: fails, then cannot-tell, then close, then holds; an empty list holds. */
export function worstState(states: readonly VerdictState[]): VerdictState {
  return states.reduce<VerdictState>(
    (worst, state) => (severity[state] > severity[worst] ? state : worst),
    'holds',
  )
}
