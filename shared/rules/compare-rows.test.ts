import { expect, test } from 'vitest'
import type { Check } from '@shared/schema/rule-check'
import type { Rule, RulePack, Subject } from '@shared/schema/rule-pack'
import { comparePacks } from './compare'

/* Rows of small packs made for the purpose, so that each way a rule can be written is seen alone. */

const atMost = (value: number): Check => ({ op: 'max', quantity: 'float.smallest-side', value, unit: 'mm' })
const rule = (more: Partial<Rule>): Rule => ({
  ...{ id: 'one', subject: 'float', says: 'A rule.', standing: 'law', confidence: 'read', sources: [0] },
  ...more,
})
const pack = (region: string, rules: Rule[], gaps: Subject[] = []): RulePack => ({
  ...{ format: 'potwright/rules', version: 1, region, name: region, authority: 'An office' },
  ...{ checkedOn: '2026-11-25', zones: [], species: [], sources: [{ title: 'A page', kind: 'law' }] },
  rules,
  notFound: gaps.map((subject) => ({ what: 'Not found.', subject })),
})
const differs = (a: Rule, b: Rule) =>
  comparePacks([pack('AA', [a]), pack('BB', [b])]).map((row) => row.differs)

test('rows stand in the order of the subjects, whatever the order of the rules', () => {
  const rules = [rule({ subject: 'seasons' }), rule({ subject: 'mesh' }), rule({ subject: 'counts' })]
  const rows = comparePacks([pack('AA', rules)])
  expect(rows.map((row) => row.subject)).toEqual(['counts', 'mesh', 'seasons'])
})

test('a region without a rule is silent, or was searched in vain for that subject alone', () => {
  const asks = pack('AA', [rule({ check: atMost(100) })])
  const states = comparePacks([asks, pack('BB', [], ['float']), pack('CC', [], ['bait'])])
  expect(states.map(({ subject, cells }) => [subject, cells.map((cell) => cell.state)])).toEqual([
    ['float', ['rules', 'not-found', 'silent']],
    ['bait', ['silent', 'silent', 'not-found']],
  ])
})

test('regions of which none has a rule do not differ, whether they were searched or not', () => {
  const [row] = comparePacks([pack('AA', []), pack('BB', [], ['float'])])
  expect(row).toMatchObject({ subject: 'float', differs: false })
})

test('a subject searched in vain has a row of its own only where no region has a rule on it', () => {
  const rows = comparePacks([pack('AA', [rule({}), rule({ subject: 'mesh' })]), pack('BB', [], ['float'])])
  expect(rows.map((row) => row.subject)).toEqual(['mesh', 'float'])
})

test('rules that measure nothing share the row of their subject', () => {
  const rows = comparePacks([
    pack('AA', [rule({ shown: 'Read it.' })]),
    pack('BB', [rule({ shown: 'Read it.' })]),
  ])
  expect(rows).toHaveLength(1)
  expect(rows[0]).not.toHaveProperty('quantity')
})

test.each<[string, Check]>([
  ['in a number', atMost(1)],
  ['in the first of several', { op: 'any-of', checks: [{ op: 'forbidden' }, atMost(1)] }],
  ['in what there has to be', { op: 'has', of: 'gap', each: [{ count: 1, where: atMost(1) }] }],
  ['in every one', { op: 'every', of: 'gap', where: atMost(1) }],
  ['in what must not be', { op: 'not', check: atMost(1) }],
])('the quantity is found %s', (_where, check) => {
  expect(comparePacks([pack('AA', [rule({ check })])]).map((row) => row.quantity)).toEqual([
    'float.smallest-side',
  ])
})

test('the quantity of a disputed rule is that of the first reading with a check', () => {
  const readings = [{ says: 'No rule.' }, { says: 'A rule.', check: atMost(1) }]
  const [row] = comparePacks([pack('AA', [rule({ readings })])])
  expect(row?.quantity).toBe('float.smallest-side')
})

test('a check that measures nothing has no quantity', () => {
  const [row] = comparePacks([pack('AA', [rule({ check: { op: 'forbidden' } })])])
  expect(row).not.toHaveProperty('quantity')
})

test('regions differ by what they ask and how strictly, not by how they say it', () => {
  const asked = rule({ check: atMost(100), says: 'Not over 100.' })
  expect(differs(asked, { ...asked, id: 'two', says: 'At most 100.' })).toEqual([false])
  expect(differs(asked, { ...asked, check: atMost(90) })).toEqual([true])
  expect(differs(asked, { ...asked, standing: 'advice' })).toEqual([true])
  const disputed = (value: number) =>
    rule({ readings: [{ says: 'One.', check: atMost(value) }, { says: 'Two.' }] })
  expect(differs(disputed(100), disputed(100))).toEqual([false])
  expect(differs(disputed(100), disputed(90))).toEqual([true])
  expect(differs(rule({ shown: 'Read it.' }), rule({ shown: 'Read it.', says: 'Another.' }))).toEqual([true])
})
