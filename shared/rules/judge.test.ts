import { expect, test } from 'vitest'
import { PotSchema, type Pot } from '@shared/schema/pot'
import type { Rule, RulePack } from '@shared/schema/rule-pack'
import type { Trip } from '@shared/schema/trip'
import * as v from 'valibot'
import { judge, rulesToRead } from './judge'

const pot = (parts: object = {}): Pot =>
  v.parse(PotSchema, {
    format: 'potwright/pot',
    version: 1,
    id: 'p',
    name: 'P',
    gearKind: 'pot',
    body: { shape: 'box', lengthMm: 600, widthMm: 500, heightMm: 400, folds: true, feet: 0 },
    ...parts,
  })
const trip = (parts: Partial<Trip> = {}): Trip => ({ format: 'potwright/trip', version: 1, ...parts })

const rule = (parts: Partial<Rule>): Rule => ({
  id: 'height',
  subject: 'size',
  says: 'A pot is low.',
  standing: 'law',
  confidence: 'read',
  sources: [0],
  ...(parts.shown === undefined && parts.readings === undefined ? { check: low(300) } : {}),
  ...parts,
})
const low = (value: number) => ({
  op: 'max' as const,
  quantity: 'body.height' as const,
  value,
  unit: 'mm' as const,
})

const pack = (rules: Rule[], more: Partial<RulePack> = {}): RulePack => ({
  format: 'potwright/rules',
  version: 1,
  region: 'XX',
  name: 'Nowhere',
  authority: 'The harbour office',
  checkedOn: '2026-11-25',
  zones: [
    { id: 'inner', name: 'Inner' },
    { id: 'outer', name: 'Outer' },
  ],
  sources: [
    {
      title: 'The book',
      publisher: 'The harbour office',
      date: '2020',
      url: 'https://example.org/',
      kind: 'law',
    },
  ],
  rules,
  notFound: [],
  species: [],
  ...more,
})

test('a finding has the value, the limit, the margin, the part, the standing and the source', () => {
  const { state, findings } = judge(pack([rule({})]), { pot: pot() })
  expect(state).toBe('fails')
  expect(findings).toEqual([
    {
      rule: 'height',
      state: 'fails',
      part: 'body',
      what: "A pot is low. The pot's height is 400 mm, 100 mm too much. Make the pot lower.",
      actual: 400,
      limit: 300,
      margin: -100,
      unit: 'mm',
      standing: 'law',
      source: {
        title: 'The book',
        publisher: 'The harbour office',
        date: '2020',
        url: 'https://example.org/',
        checkedOn: '2026-11-25',
        confidence: 'read',
      },
    },
  ])
})

test("a limit in inches is printed so, and held to a tenth of a millimetre in the pot's favour", () => {
  const inches = rule({ check: { ...low(15.75), unit: 'in' } })
  const at = (heightMm: number) =>
    judge(pack([inches]), { pot: pot({ body: { ...pot().body, heightMm } }) }).findings[0]
  expect(at(400.1)).toMatchObject({ state: 'holds', limit: 400.1 })
  expect(at(400.2)).toMatchObject({ state: 'fails' })
  expect(at(500)?.what).toContain('is 19.7 in (500 mm), 3.93 in too much')
})

test('advice and proposals are close at worst, and say what they are', () => {
  const advised = judge(pack([rule({ standing: 'advice' })]), { pot: pot() })
  expect(advised.state).toBe('close')
  expect(advised.findings[0]?.what).toMatch(/^Advice, not law: a pot is low\./)
  const proposed = judge(pack([rule({ standing: 'proposal' })]), { pot: pot() })
  expect(proposed.findings[0]).toMatchObject({ state: 'close', standing: 'proposal' })
})

test('a value from memory is marked in the sentence and the source', () => {
  const { findings } = judge(pack([rule({ confidence: 'memory' })]), { pot: pot() })
  expect(findings[0]?.what).toContain('Recalled, not read in a source.')
  expect(findings[0]?.source?.confidence).toBe('memory')
})

test('sources that disagree: told where they agree on this pot, else both are named', () => {
  const disputed = rule({
    confidence: 'conflicting',
    readings: [
      { says: 'one has at most 300 mm', check: low(300) },
      { says: 'one has at most 450 mm', check: low(450) },
    ],
  })
  const at = (heightMm: number) =>
    judge(pack([disputed]), { pot: pot({ body: { ...pot().body, heightMm } }) }).findings[0]
  expect(at(200)?.state).toBe('holds')
  expect(at(500)?.state).toBe('fails')
  expect(at(400)).toMatchObject({ state: 'cannot-tell', missing: 'which of the sources is right' })
  expect(at(400)?.what).toContain('one has at most 300 mm; one has at most 450 mm')
})

test('a source that knows no such rule is a side of the dispute', () => {
  const disputed = rule({
    confidence: 'conflicting',
    readings: [{ says: 'at most 300 mm', check: low(300) }, { says: 'no such rule' }],
  })
  expect(judge(pack([disputed]), { pot: pot() }).state).toBe('cannot-tell')
  expect(judge(pack([disputed]), { pot: pot({ body: { ...pot().body, heightMm: 200 } }) }).state).toBe(
    'holds',
  )
})

test('a part that is left out makes a rule that cannot be told, and names it', () => {
  const mesh = rule({ check: { op: 'min', quantity: 'mesh.bar', value: 25, unit: 'mm' } })
  expect(judge(pack([mesh]), { pot: pot() }).findings[0]).toMatchObject({
    state: 'cannot-tell',
    part: 'netting',
    missing: 'the netting',
    what: 'A pot is low. Cannot tell without knowing the netting.',
  })
})

test('a rule of a zone: outside it is silent, an unknown zone matters only where the rule is not met', () => {
  const inner = pack([rule({ applies: { zones: ['inner'] } })])
  expect(judge(inner, { pot: pot(), trip: trip({ zone: 'outer' }) }).findings).toEqual([])
  expect(judge(inner, { pot: pot(), trip: trip({ zone: 'inner' }) }).state).toBe('fails')
  expect(judge(inner, { pot: pot(), trip: trip() }).findings[0]).toMatchObject({
    state: 'cannot-tell',
    missing: 'the zone',
  })
  expect(judge(inner, { pot: pot(), trip: trip({ zone: 'elsewhere' }) }).state).toBe('cannot-tell')
  expect(judge(inner, { pot: pot({ body: { ...pot().body, heightMm: 200 } }), trip: trip() }).state).toBe(
    'holds',
  )
})

test('dates: before and after a rule is silent; today stands in for a date in a rule long in force', () => {
  const dated = pack([rule({ from: '2018-07', to: '2027' })])
  const on = (date: string) => judge(dated, { pot: pot(), trip: trip({ date }) }).findings.length
  expect(['2018-06-30', '2018-07-01', '2027-12-31', '2028-01-01'].map(on)).toEqual([0, 1, 1, 0])
  const open = pack([rule({ from: '2018-07' })])
  expect(judge(open, { pot: pot(), now: '2026-12-05T08:00:00Z' }).state).toBe('fails')
  expect(judge(open, { pot: pot() }).state).toBe('cannot-tell')
})

test('a season that passes the new year', () => {
  const closed = pack([rule({ check: { op: 'closed', seasons: [{ from: '12-01', to: '03-16' }] } })])
  const on = (date: string) => judge(closed, { pot: pot(), trip: trip({ date }) }).state
  expect(['2026-11-30', '2026-12-01', '2027-03-16', '2027-03-17'].map(on)).toEqual([
    'holds',
    'fails',
    'fails',
    'holds',
  ])
})

test('days in a row from a weekday of a month on, past the new year too', () => {
  const on = (nth: number, month: number, days: number, date: string) =>
    judge(pack([rule({ check: { op: 'closed-from', month, nth, weekday: 'friday', days } })]), {
      pot: pot(),
      trip: trip({ date }),
    }).state
  // Third Fridays of February: 20 in 2026, 19 in 2027, 18 in 2028.
  const february = ['2026-02-19', '2026-02-20', '2026-03-01', '2026-03-02', '2027-02-19', '2028-02-17']
  expect(february.map((date) => on(3, 2, 10, date))).toEqual([
    'holds',
    'fails',
    'fails',
    'holds',
    'fails',
    'holds',
  ])
  // The fourth Friday of December 2026 is Christmas Day.
  expect(['2026-12-24', '2027-01-03', '2027-01-04'].map((date) => on(4, 12, 10, date))).toEqual([
    'holds',
    'fails',
    'holds',
  ])
  expect(
    judge(pack([rule({ check: { op: 'closed-from', month: 2, nth: 3, weekday: 'friday', days: 10 } })]), {
      pot: pot(),
    }).state,
  ).toBe('cannot-tell')
})

test('alternatives: one that is met is enough; a way that only a person can check leaves it open', () => {
  const group = [
    rule({ id: 'low', group: 'shape' }),
    rule({
      id: 'narrow',
      group: 'shape',
      check: { op: 'max', quantity: 'body.width', value: 450, unit: 'mm' },
    }),
  ]
  const failed = judge(pack(group), { pot: pot() }).findings
  // The nearer miss speaks for both.
  expect(failed.map((one) => [one.rule, one.state])).toEqual([['narrow', 'fails']])
  expect(failed[0]?.what).toContain('No other way allowed is met.')
  expect(
    judge(pack(group), { pot: pot({ body: { ...pot().body, heightMm: 250 } }) }).findings.map((one) => [
      one.rule,
      one.state,
    ]),
  ).toEqual([['low', 'holds']])
  const withShown = [...group, rule({ id: 'waiver', group: 'shape', shown: 'A waiver is a paper.' })]
  expect(judge(pack(withShown), { pot: pot() }).findings).toMatchObject([
    { rule: 'waiver', state: 'cannot-tell' },
  ])
})

test('rules to read: those that are shown, and those whose facts the trip leaves out', () => {
  const shown = rule({ id: 'papers', shown: 'Papers are not part of a design.' })
  const spacing = rule({
    id: 'spacing',
    onlyIfStated: true,
    check: { op: 'min', quantity: 'trip.spacing', value: 3, unit: 'm' },
  })
  const both = pack([shown, spacing])
  expect(rulesToRead(both, { pot: pot() }).map((one) => one.id)).toEqual(['papers', 'spacing'])
  expect(judge(both, { pot: pot() })).toMatchObject({
    state: 'holds',
    findings: [],
    figures: { checked: 0, toRead: 2 },
  })
  expect(judge(both, { pot: pot(), trip: trip({ spacingM: 2 }) }).state).toBe('fails')
})

test('subjects not found make one finding, and decide only where the pack says so', () => {
  const gap = (what: string, decides?: boolean) => ({
    what,
    subject: 'mesh' as const,
    ...(decides ? { decides } : {}),
  })
  const minor = judge(pack([], { notFound: [gap('the mesh'), gap('a tag')] }), { pot: pot() })
  expect(minor.state).toBe('holds')
  expect(minor.findings).toMatchObject([
    {
      state: 'cannot-tell',
      what: 'No rule was found on the mesh and a tag. That does not mean there is none.',
    },
  ])
  expect(judge(pack([], { notFound: [gap('the number of pots', true)] }), { pot: pot() }).state).toBe(
    'cannot-tell',
  )
  expect(judge(pack([], { notFound: [{ ...gap('x'), gear: ['creel'] }] }), { pot: pot() }).findings).toEqual(
    [],
  )
})

test('kinds of gear: banned even from carrying, allowed, and not named', () => {
  const gear = (otherwise: 'fails' | 'cannot-tell') =>
    pack([
      rule({ check: { op: 'gear', allowed: ['drop-net'], banned: ['pot'], possession: true, otherwise } }),
    ])
  expect(judge(gear('fails'), { pot: pot() }).findings[0]?.what).toContain('do not even carry it')
  const kind = (gearKind: string, otherwise: 'fails' | 'cannot-tell') =>
    judge(gear(otherwise), { pot: pot({ gearKind }) }).state
  expect([kind('drop-net', 'fails'), kind('creel', 'fails'), kind('creel', 'cannot-tell')]).toEqual([
    'holds',
    'fails',
    'cannot-tell',
  ])
})

test('exemptions and permits', () => {
  const folding = pack([rule({ unless: { op: 'is', quantity: 'body.folds-flat', value: true } })])
  expect(judge(folding, { pot: pot() }).findings).toEqual([])
  const permit = pack([rule({ applies: { holds: 'five-pot-licence' } })])
  expect(judge(permit, { pot: pot(), trip: trip({ holds: [] }) }).findings).toEqual([])
  expect(judge(permit, { pot: pot(), trip: trip() }).state).toBe('cannot-tell')
  expect(judge(permit, { pot: pot(), trip: trip({ holds: ['five-pot-licence'] }) }).state).toBe('fails')
})

test('a release that is not there has no cord to measure', () => {
  const cord = pack([rule({ check: { op: 'max', quantity: 'release.cord-diameter', value: 3, unit: 'mm' } })])
  expect(judge(cord, { pot: pot({ release: { kind: 'none' } }) }).findings).toEqual([])
  expect(judge(cord, { pot: pot() }).state).toBe('cannot-tell')
})
