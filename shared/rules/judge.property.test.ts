import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Finding } from '@shared/schema/check'
import type { Check } from '@shared/schema/rule-check'
import type { Rule, RulePack } from '@shared/schema/rule-pack'
import { goldenCases, type GoldenCase } from '../../tests/fixtures/golden'
import { figuresOf, withFigure } from './figures'
import { judge } from './judge'
import { compareNumber } from './numbers'
import { readPacks } from './packs'

const packs = readPacks()
const packOf = (golden: GoldenCase): RulePack => {
  const pack = packs.get(golden.region)
  if (!pack) throw new Error(`no pack for ${golden.region}`)
  return pack
}
const anyCase = fc.constantFrom(...goldenCases)

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

test('tightening a value never clears a finding', () => {
  fc.assert(
    fc.property(
      anyCase,
      fc.nat(200),
      fc.nat(10),
      fc.double({ min: 0.01, max: 0.9, noNaN: true }),
      (golden, at, pick, share) => {
        const pack = packOf(golden)
        const rule = pack.rules[at % pack.rules.length]
        const stricter = rule && tightened(rule, pick, share)
        fc.pre(rule !== undefined && stricter !== undefined)
        const before = stateOf(pack, rule, judge(pack, golden).findings)
        const changed = { ...pack, rules: pack.rules.map((one) => (one.id === stricter.id ? stricter : one)) }
        const after = stateOf(changed, stricter, judge(changed, golden).findings)
        if (before === 'fails') expect(after).toBe('fails')
        if (before === 'cannot-tell' || before === 'close') expect(after).not.toBe('holds')
      },
    ),
    { numRuns: 400 },
  )
})

test('a stricter limit is never met where a looser one is not', () => {
  const figure = fc.double({ min: 0, max: 5000, noNaN: true })
  fc.assert(
    fc.property(figure, figure, figure, (actual, a, b) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)]
      const most = (value: number) => compareNumber('max', 'body.height', actual, value, 'mm').state
      const least = (value: number) => compareNumber('min', 'body.height', actual, value, 'in').state
      if (most(high) === 'fails') expect(most(low)).toBe('fails')
      if (least(low) === 'fails') expect(least(high)).toBe('fails')
    }),
  )
})

test('a rule outside its zone never fires', () => {
  fc.assert(
    fc.property(anyCase, fc.nat(20), (golden, at) => {
      const pack = packOf(golden)
      const zone = pack.zones[at % Math.max(1, pack.zones.length)]
      fc.pre(zone !== undefined)
      const { findings } = judge(pack, { ...golden, trip: { ...golden.trip, zone: zone.id } })
      const outside = pack.rules.filter(
        ({ applies }) =>
          (applies?.zones && !applies.zones.includes(zone.id)) || applies?.exceptZones?.includes(zone.id),
      )
      expect(findings.filter((one) => outside.some((rule) => rule.id === one.rule))).toEqual([])
    }),
  )
})

test('a rule outside its dates, season or kinds of gear never fires', () => {
  const day = fc.date({ min: new Date('1990-01-01'), max: new Date('2040-12-31'), noInvalidDate: true })
  fc.assert(
    fc.property(anyCase, day, (golden, at) => {
      const pack = packOf(golden)
      const date = at.toISOString().slice(0, 10)
      const { findings } = judge(pack, { ...golden, trip: { ...golden.trip, date } })
      const outside = pack.rules.filter(
        ({ from, to, applies }) =>
          (from !== undefined && date < from) ||
          (to !== undefined && date.slice(0, to.length) > to) ||
          (applies?.gear && !applies.gear.includes(golden.pot.gearKind)),
      )
      expect(findings.filter((one) => outside.some((rule) => rule.id === one.rule))).toEqual([])
    }),
  )
})

test('what is not known never makes a rule hold', () => {
  const parts = [
    'netting',
    'entrances',
    'escapeGaps',
    'release',
    'rope',
    'float',
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
  ] as const
  fc.assert(
    fc.property(anyCase, fc.subarray([...parts]), fc.subarray([...facts]), (golden, lost, unsaid) => {
      const pack = packOf(golden)
      const pot = without(golden.pot, lost)
      const trip = without(golden.trip, unsaid)
      const full = judge(pack, golden).findings
      const { findings } = judge(pack, { ...golden, pot, trip })
      const held = findings.filter((one) => one.state === 'holds')
      const contradicted = held.filter((one) => {
        const rule = pack.rules.find((other) => other.id === one.rule)
        const known = rule && stateOf(pack, rule, full)
        return known === 'fails' || known === 'cannot-tell'
      })
      expect(contradicted).toEqual([])
    }),
    { numRuns: 400 },
  )
})

function without<T extends object>(document: T, fields: readonly (keyof T)[]): T {
  return Object.fromEntries(
    Object.entries(document).filter(([key]) => !fields.some((field) => field === key)),
  ) as T
}

test('findings come worst first, and the verdict is the worst of the rules found', () => {
  const rank = { fails: 0, 'cannot-tell': 1, close: 2, holds: 3 }
  for (const golden of goldenCases) {
    const verdict = judge(packOf(golden), golden)
    const ranks = verdict.findings.map((finding) => rank[finding.state])
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
    const found = verdict.findings.filter((finding) => !finding.rule.endsWith(':not-found'))
    const worst = Math.min(3, ...found.map((finding) => rank[finding.state]))
    expect(rank[verdict.state]).toBeLessThanOrEqual(worst)
  }
})
