import { expect, test } from 'vitest'
import { goldenCases } from '../../tests/fixtures/golden'
import { judge } from './judge'
import { blankPack, copiedPack, freshRuleId, withRule } from './own-packs'
import { emptyOwnPack, inUse } from './own-rules'
import { readPacks } from './packs'

const base = readPacks().get('US-WA')
if (!base) throw new Error('no pack')
const golden = goldenCases.find((one) => one.region === 'US-WA' && one.fails.length === 0)
if (!golden) throw new Error('no golden pot')
const value = <T>(result: { ok: true; value: T } | { ok: false; error: { message: string } }): T => {
  if (!result.ok) throw new Error(result.error.message)
  return result.value
}
const head = {
  region: 'US-XX',
  name: 'Heron Bay',
  authority: 'Heron Bay harbour office',
  today: '2026-12-03',
}
const rule = {
  id: 'own-1',
  subject: 'rope' as const,
  says: 'The rope is at least 8 mm thick.',
  standing: 'law' as const,
  confidence: 'read' as const,
  check: { op: 'min' as const, quantity: 'rope.diameter' as const, value: 8, unit: 'mm' as const },
  user: { date: '2026-12-03' },
}

test('a blank pack tells nothing, and a rule put into it is judged by', () => {
  const blank = value(blankPack(head))
  expect(judge(blank, golden).state).toBe('cannot-tell')
  const thin = { ...golden.pot, rope: golden.pot.rope && { ...golden.pot.rope, diameterMm: 6 } }
  const mine = value(withRule(blank, rule))
  expect(judge(mine, { ...golden, pot: thin }).findings[0]).toMatchObject({ rule: 'own-1', state: 'fails' })
})

test('a rule is put in place of one with its id, with its source once', () => {
  const source = { title: 'Sign at the slip', kind: 'notice' as const, date: '2026-12-03' }
  const once = value(withRule(value(blankPack(head)), rule, source))
  const twice = value(withRule(once, { ...rule, says: 'The rope is at least 10 mm thick.' }, source))
  expect(twice.rules.map((one) => one.says)).toEqual(['The rope is at least 10 mm thick.'])
  expect(twice.sources.filter((one) => one.title === source.title)).toHaveLength(1)
})

test('a rule that fits nothing is refused with its path', () => {
  const wrong = { ...rule, check: { ...rule.check, unit: 'kg' as const } }
  expect(withRule(value(blankPack(head)), wrong)).toMatchObject({
    ok: false,
    error: { path: 'rules.0.check.unit' },
  })
  expect(blankPack({ ...head, region: 'heron' })).toMatchObject({ ok: false, error: { path: 'region' } })
})

test('a copy under another region keeps the day of its sources and is marked as the user’s', () => {
  const copy = value(copiedPack(base, head))
  expect(copy).toMatchObject({ region: 'US-XX', own: true, checkedOn: base.checkedOn })
  const finding = judge(copy, golden).findings.find((one) => one.rule === 'US-WA:cord-size')
  expect(finding?.source?.confidence).toBe('user')
  const over = emptyOwnPack(base, '2026-12-03')
  expect(value(copiedPack(over, head)).over).toBeUndefined()
})

test('a fresh id is used in neither pack', () => {
  const own = value(withRule(emptyOwnPack(base, '2026-12-03'), rule))
  expect(freshRuleId(base, own)).toBe('own-2')
  expect(freshRuleId(base, undefined)).toBe('own-1')
  expect(value(inUse(base, own)).rules.some((one) => one.id === 'own-1')).toBe(true)
})
