import { expect, test } from 'vitest'
import { goldenCases } from '../../tests/fixtures/golden'
import { judge } from './judge'
import { emptyOwnPack, inUse, withoutRule, withShadow } from './own-rules'
import { readPacks } from './packs'

const base = readPacks().get('US-WA')
if (!base) throw new Error('no pack')
const golden = goldenCases.find((one) => one.region === 'US-WA' && one.fails.length === 0)
if (!golden) throw new Error('no golden pot')
const empty = emptyOwnPack(base, '2026-12-03T10:00:00Z')
const value = <T>(result: { ok: true; value: T } | { ok: false; error: { message: string } }): T => {
  if (!result.ok) throw new Error(result.error.message)
  return result.value
}
const shadow = {
  ruleId: 'US-WA:cord-size',
  change: { figures: [{ path: 'checks.0.value', value: 0.1 }] },
  date: '2026-12-03',
  note: 'Asked at the counter.',
}

test('a shadowed value changes the verdict, is marked with its date, and goes when it is removed', () => {
  expect(judge(base, golden).state).toBe('holds')
  const own = value(withShadow(empty, base, shadow))
  const verdict = judge(value(inUse(base, own)), golden)
  const finding = verdict.findings.find((one) => one.rule === 'US-WA:cord-size')
  expect(verdict.state).toBe('fails')
  expect(finding).toMatchObject({
    state: 'fails',
    limit: 2.6,
    source: { confidence: 'user', checkedOn: '2026-12-03' },
  })
  expect(finding?.what).toContain('Your own value of 2026-12-03.')
  expect(judge(value(inUse(base, withoutRule(own, 'US-WA:cord-size'))), golden).state).toBe('holds')
})

test('a shadow keeps what it replaces, and shadowing again replaces the shadow', () => {
  const once = value(withShadow(empty, base, shadow))
  const twice = value(
    withShadow(once, base, { ...shadow, change: { figures: [{ path: 'checks.0.value', value: 0.2 }] } }),
  )
  expect(twice.rules).toHaveLength(1)
  expect(twice.rules[0]?.user?.replaces).toBe(base.rules.find((rule) => rule.id === 'US-WA:cord-size')?.says)
})

test('a figure that is not there, and a rule that is only read, cannot be shadowed by a figure', () => {
  expect(
    withShadow(empty, base, { ...shadow, change: { figures: [{ path: 'checks.7.value', value: 1 }] } }).ok,
  ).toBe(false)
  expect(withShadow(empty, base, { ...shadow, ruleId: 'US-WA:licence' }).ok).toBe(false)
  expect(withShadow(empty, base, { ...shadow, ruleId: 'US-WA:no-such-rule' }).ok).toBe(false)
})

test('words alone may be changed, of a checked rule and of one that is only read', () => {
  const licence = value(
    withShadow(empty, base, {
      ...shadow,
      ruleId: 'US-WA:licence',
      change: 'words',
      says: 'Seen at the counter.',
    }),
  ).rules[0]
  expect(licence).toMatchObject({ says: 'Seen at the counter.', user: { date: '2026-12-03' } })
  expect(licence?.shown).toBe(base.rules.find((rule) => rule.id === 'US-WA:licence')?.shown)
  const cord = value(withShadow(empty, base, { ...shadow, change: 'words', says: 'As printed.' })).rules[0]
  expect(cord?.check).toEqual(base.rules.find((rule) => rule.id === 'US-WA:cord-size')?.check)
})

test('an own rule is added, may name a shipped zone, and is refused with a zone that nobody lists', () => {
  const rule = {
    id: 'own-marina',
    subject: 'areas' as const,
    says: 'No pots inside the breakwater.',
    standing: 'law' as const,
    confidence: 'read' as const,
    sources: [0],
    applies: { zones: ['puget-sound'] },
    check: { op: 'forbidden' as const },
  }
  const merged = value(inUse(base, { ...empty, rules: [rule] }))
  const finding = judge(merged, golden).findings[0]
  expect(finding).toMatchObject({
    rule: 'own-marina',
    state: 'fails',
    source: { title: 'Your own note', confidence: 'user' },
  })
  expect(inUse(base, { ...empty, rules: [{ ...rule, applies: { zones: ['nowhere'] } }] }).ok).toBe(false)
})

test('a subject that the user found is no longer not found', () => {
  const rule = {
    id: 'found-tag',
    subject: 'marking' as const,
    says: 'A tag is fitted.',
    standing: 'law' as const,
    confidence: 'read' as const,
    sources: [0],
    check: { op: 'includes' as const, quantity: 'marks.tag' as const, values: ['last-name'] },
  }
  const withGap = { ...base, notFound: [{ id: 'found-tag', what: 'a tag', subject: 'marking' as const }] }
  expect(value(inUse(withGap, { ...empty, rules: [rule] })).notFound).toEqual([])
})

test('a whole pack of the user stands alone and marks every finding', () => {
  const alone = value(inUse(base, { ...base, own: true }))
  const sources = judge(alone, golden).findings.flatMap((one) =>
    one.rule.endsWith('not-found') ? [] : [one.source?.confidence],
  )
  expect(new Set(sources)).toEqual(new Set(['user']))
})
