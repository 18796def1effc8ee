import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { worstState, type Finding } from '@shared/schema/check'
import type { Check } from '@shared/schema/rule-check'
import type { Rule, RulePack } from '@shared/schema/rule-pack'
import { arbitraryPot, completePot } from '../../tests/fixtures/arbitrary-pot'
import { arbitraryTrip } from '../../tests/fixtures/arbitrary-trip'
import { goldenCases } from '../../tests/fixtures/golden'
import { inSeason } from './calendar'
import type { LegalCase } from './facts'
import { figuresOf, withFigure } from './figures'
import { judge } from './judge'
import { compareNumber } from './numbers'
import { readPacks } from './packs'

const runs = { numRuns: 60 }

/** What a rule, or the group of alternatives it is in, came to. */
function stateOf(pack: RulePack, rule: Rule, findings: readonly Finding[]): Finding['state'] | undefined {
  const ids = rule.group
    ? pack.rules.filter((one) => one.group === rule.group).map((one) => one.id)
    : [rule.id]
  return findings.find((finding) => ids.includes(finding.rule))?.state
}

const turnsRound = (check: Check): boolean =>
  check.op === 'not' || check.op === 'none' || ('checks' in check && check.checks.some(turnsRound))

/** The rule with one figure of its check made stricter: less of a most, more of a least. */
function tightened(rule: Rule, pick: number, share: number): Rule | undefined {
  if (!rule.check || turnsRound(rule.check)) return undefined
  const figures = figuresOf(rule.check)
  const figure = figures[pick % Math.max(1, figures.length)]
  if (!figure) return undefined
  const isCount = figure.unit === 'count'
  const isMost = figure.path.includes('limits') || isMaxAt(rule.check, figure.path)
  const value = isMost ? figure.value * (1 - share) : figure.value * (1 + share)
  const check = withFigure(
    rule.check,
    figure.path,
    isCount ? (isMost ? Math.floor(value) : Math.ceil(value)) : value,
  )
  return check && { ...rule, check }
}

function isMaxAt(check: Check, path: string): boolean {
  const holder = path
    .split('.')
    .slice(0, -1)
    .reduce<unknown>((node, key) => (node as Record<string, unknown>)[key], check)
  return (holder as { op?: string }).op === 'max'
}

function without<T extends object>(document: T, fields: readonly (keyof T)[]): T {
  return Object.fromEntries(
    Object.entries(document).filter(([key]) => !fields.some((field) => field === key)),
  ) as T
}

const parts = [
  'netting',
  'entrances',
  'escapeGaps',
  'release',
  'rope',
  'float',
  'markerFloat',
  'marks',
  'chafe',
  'bait',
  'frame',
] as const
const facts = [
  'date',
  'zone',
  'people',
  'licences',
  'boat',
  'pots',
  'tiedOff',
  'attended',
  'soakH',
  'species',
  'holds',
  'workFrom',
  'spacingM',
] as const

describe.each([...readPacks()])('%s', (region, pack) => {
  const golden = goldenCases.filter((one) => one.region === region)
  const trip = arbitraryTrip(pack)
  // Pots that meet or break the rules by design, such pots on any trip, and any pot at all.
  const anyCase: fc.Arbitrary<LegalCase & { trip: object }> = fc.oneof(
    fc.constantFrom(...golden),
    fc.record({ pot: fc.constantFrom(...golden.map(({ pot }) => pot)), trip }),
    fc.record({ pot: fc.oneof(completePot, arbitraryPot), trip }),
  )

  test('tightening a value never clears a finding', () => {
    const strict = pack.rules.flatMap((rule, index) => (tightened(rule, 0, 0.5) ? [index] : []))
    // In some regions no rule on the gear has a figure in it.
    if (strict.length === 0) {
      expect(pack.rules.flatMap(({ check }) => (check ? figuresOf(check) : []))).toEqual([])
      return
    }
    fc.assert(
      fc.property(
        anyCase,
        fc.constantFrom(...strict),
        fc.nat(10),
        fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        (legal, at, pick, share) => {
          const rule = pack.rules[at]
          const stricter = rule && tightened(rule, pick, share)
          fc.pre(rule !== undefined && stricter !== undefined)
          const before = stateOf(pack, rule, judge(pack, legal).findings)
          const changed = { ...pack, rules: pack.rules.with(at, stricter) }
          const after = stateOf(changed, stricter, judge(changed, legal).findings)
          if (before === 'fails') expect(after).toBe('fails')
          if (before === 'cannot-tell' || before === 'close') expect(after).not.toBe('holds')
        },
      ),
      { numRuns: 200 },
    )
  })

  test('a rule outside its zone, dates, season, species or kinds of gear never fires', () => {
    fc.assert(
      fc.property(anyCase, (legal) => {
        const { zone, date, species, holds } = legal.trip
        const isElsewhere = ({ applies }: Rule) =>
          zone !== undefined &&
          pack.zones.some((one) => one.id === zone) &&
          ((applies?.zones && !applies.zones.includes(zone)) || applies?.exceptZones?.includes(zone))
        const isAnotherTime = ({ from, to, applies }: Rule) =>
          date !== undefined &&
          ((from !== undefined && date < from) ||
            (to !== undefined && date.slice(0, to.length) > to) ||
            (applies?.seasons && !applies.seasons.some((season) => inSeason(date, season))))
        const isOther = ({ applies }: Rule) =>
          (applies?.gear && !applies.gear.includes(legal.pot.gearKind)) ||
          (species && applies?.species && !applies.species.some((one) => species.includes(one))) ||
          (holds && applies?.holds && !holds.includes(applies.holds))
        const outside = new Set(
          pack.rules
            .filter((rule) => isElsewhere(rule) || isAnotherTime(rule) || isOther(rule))
            .map(({ id }) => id),
        )
        const fired = judge(pack, legal).findings.filter((one) => outside.has(one.rule))
        expect(fired.map(({ rule }) => rule)).toEqual([])
      }),
      runs,
    )
  })

  test('what is not known never makes a rule hold, nor a verdict', () => {
    fc.assert(
      fc.property(anyCase, fc.subarray([...parts]), fc.subarray([...facts]), (legal, lost, unsaid) => {
        const full = judge(pack, legal)
        const less = judge(pack, {
          ...legal,
          pot: without(legal.pot, lost),
          trip: without(legal.trip, unsaid),
        })
        const contradicted = less.findings.filter((one) => {
          const rule = pack.rules.find((other) => other.id === one.rule)
          const known = rule && stateOf(pack, rule, full.findings)
          return one.state === 'holds' && (known === 'fails' || known === 'cannot-tell')
        })
        expect(contradicted).toEqual([])
        if (full.state === 'fails' || full.state === 'cannot-tell') expect(less.state).not.toBe('holds')
      }),
      runs,
    )
  })

  test('of a pot with only a body, no rule on another part holds by a value', () => {
    for (const { pot } of golden) {
      const bare = without(pot, [...parts, 'ballast', 'doors', 'bridle', 'catchKg'])
      const held = judge(pack, { pot: bare }).findings.filter(
        ({ state, actual }) => state === 'holds' && actual !== undefined,
      )
      // What still holds is read off the body or the kind of gear, which every design states.
      const about = held.map(({ part }) => part).filter((part) => part !== 'body')
      expect(about).toEqual([])
    }
  })

  test('findings come worst first, and the verdict is the worst of the rules found', () => {
    const rank = { fails: 0, 'cannot-tell': 1, close: 2, holds: 3 }
    fc.assert(
      fc.property(anyCase, (legal) => {
        const verdict = judge(pack, legal)
        const ranks = verdict.findings.map((finding) => rank[finding.state])
        expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
        const found = verdict.findings.filter((finding) => !finding.rule.endsWith(':not-found'))
        const worst = worstState(found.map(({ state }) => state))
        expect(rank[verdict.state]).toBeLessThanOrEqual(found.length > 0 ? rank[worst] : 3)
      }),
      runs,
    )
  })
})

test('a stricter limit is never met where a looser one is not', () => {
  const figure = fc.double({ min: 0, max: 5000, noNaN: true })
  fc.assert(
    fc.property(figure, figure, figure, (actual, a, b) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)]
      const held = (op: 'max' | 'min', value: number, unit: 'mm' | 'in') =>
        compareNumber({ op, quantity: 'body.height', value, unit }, actual).state
      const most = (value: number) => held('max', value, 'mm')
      const least = (value: number) => held('min', value, 'in')
      if (most(high) === 'fails') expect(most(low)).toBe('fails')
      if (least(low) === 'fails') expect(least(high)).toBe('fails')
    }),
  )
})
