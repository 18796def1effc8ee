import * as v from 'valibot'
import { partNames, type Standing } from './check'
import { calendarDay, name, regionCode, shortText, slug } from './fields'
import { check, scope } from './rule-check'
import { longText, partialDate, ruleConfidences, sourceIndex, userMark } from './rule-fields'
import { species } from './rule-species'

/*
 * The rules of one region, `potwright/rules`. Every fact carries where it was read and how sure it is. A rule is
 * either checked by the engine or shown for a person to read, with the reason why a program cannot check it.
 */

export const subjects = [
  'gear-kinds',
  'counts',
  'size',
  'mesh',
  'entrances',
  'turtle-frames',
  'escape-gaps',
  'release',
  'rope',
  'float',
  'marking',
  'bait',
  'attendance',
  'seasons',
  'hours',
  'areas',
  'spacing',
  'licence',
  'catch',
  'other',
] as const
export type Subject = (typeof subjects)[number]

const sourceKinds = ['law', 'official', 'official-copy', 'secondary', 'commercial-law', 'notice'] as const

const source = v.strictObject({
  title: v.pipe(v.string(), v.minLength(1), v.maxLength(300)),
  publisher: v.optional(shortText),
  /** When the copy was made, as its page says it: a date or words. */
  date: v.optional(shortText),
  url: v.optional(v.pipe(v.string(), v.url('must be a web address'), v.maxLength(500))),
  kind: v.picklist(sourceKinds),
  note: v.optional(longText),
})

const zone = v.strictObject({ id: slug, name, note: v.optional(longText) })

const ruleId = v.pipe(
  v.string(),
  v.regex(/^([A-Z]{2}(-[A-Z]{2,3})?:)?[a-z0-9]+(-[a-z0-9]+)*$/, 'must be an id like US-WA:cord-size'),
)

/** One of the readings of a rule on which sources disagree; without a check it says that there is no such rule. */
const reading = v.strictObject({
  says: shortText,
  check: v.optional(check),
  source: v.optional(sourceIndex),
})

const rule = v.pipe(
  v.strictObject({
    id: ruleId,
    subject: v.picklist(subjects),
    /** The rule in one plain sentence. */
    says: v.pipe(v.string(), v.minLength(1), v.maxLength(400)),
    /** The part it is about, where the quantity does not say. */
    part: v.optional(v.picklist(partNames)),
    standing: v.picklist(['law', 'advice', 'proposal'] satisfies Standing[]),
    confidence: v.picklist(ruleConfidences),
    sources: v.pipe(v.array(sourceIndex), v.minLength(1, 'must name a source')),
    applies: v.optional(scope),
    /** Applies only where this holds, and not where that holds. */
    when: v.optional(check),
    unless: v.optional(check),
    from: v.optional(partialDate),
    to: v.optional(partialDate),
    /** Rules of one group are alternatives: meeting one is enough. */
    group: v.optional(slug),
    check: v.optional(check),
    /** In place of a check: what each source says, where they disagree. */
    readings: v.optional(v.pipe(v.array(reading), v.minLength(2, 'must carry both sides'))),
    /** In place of a check: why a program cannot check it. */
    shown: v.optional(v.pipe(v.string(), v.minLength(1), v.maxLength(400))),
    /** Read, not checked, as long as the trip leaves out what the check needs. */
    onlyIfStated: v.optional(v.boolean()),
    note: v.optional(longText),
    user: v.optional(userMark),
  }),
  v.check(
    (rule) => [rule.check, rule.readings, rule.shown].filter((way) => way !== undefined).length === 1,
    'must have one of check, readings or shown',
  ),
)

/** A subject searched for without success: unknown, not unlimited. */
const notFound = v.strictObject({
  /** Where the fact carried over has an id of its own. */
  id: v.optional(ruleId),
  what: shortText,
  subject: v.picklist(subjects),
  gear: v.optional(scope.entries.gear),
  /** So basic that nothing can be called legal without it. */
  decides: v.optional(v.boolean()),
  note: v.optional(longText),
  sources: v.optional(v.array(sourceIndex)),
})

export const RulePackSchema = v.strictObject({
  format: v.literal('potwright/rules'),
  version: v.literal(1),
  region: regionCode,
  name,
  authority: name,
  /** Web address of the authority's own page on these rules. */
  officialUrl: v.optional(v.pipe(v.string(), v.url('must be a web address'))),
  checkedOn: calendarDay,
  note: v.optional(longText),
  /** Made or changed by the user, not shipped. */
  own: v.optional(v.boolean()),
  /** Only the user's own rules, laid over the shipped pack: same ids stand in for shipped ones, others are added. */
  over: v.optional(v.literal('built-in')),
  zones: v.array(zone),
  sources: v.pipe(v.array(source), v.minLength(1, 'must name a source')),
  rules: v.array(rule),
  notFound: v.array(notFound),
  species: v.array(species),
  changes: v.optional(v.array(v.strictObject({ date: partialDate, what: longText }))),
})

export type RulePack = v.InferOutput<typeof RulePackSchema>
export type Rule = v.InferOutput<typeof rule>
export type RuleSource = v.InferOutput<typeof source>
export type NotFound = v.InferOutput<typeof notFound>
