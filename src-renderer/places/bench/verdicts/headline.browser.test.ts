import type { Finding, Verdict } from '@shared/schema/check'
import { expect, test } from 'vitest'
import { headline } from './headline'

const finding = (rule: string, state: Finding['state'], margin?: number, limit?: number): Finding => ({
  rule,
  state,
  what: rule,
  standing: 'engineering',
  ...(margin === undefined ? {} : { margin }),
  ...(limit === undefined ? {} : { limit }),
})
const verdict = (state: Verdict['state'], ...findings: Finding[]): Verdict => ({ state, findings })

test('a verdict that holds is known by its first question, not by a remark beside it', () => {
  const slides = finding('slides', 'holds', 0.3, 0.5)
  expect(headline(verdict('holds', slides, finding('range', 'holds', -0.04, 0.13)))).toBe(slides)
})

test('one that fails is known by what is furthest from its limit', () => {
  const far = finding('tips', 'fails', -4, 10)
  const near = finding('slides', 'fails', -1, 10)
  expect(headline(verdict('fails', finding('land', 'holds', 9, 10), near, far))).toBe(far)
})

test('what cannot be told has no margin, and a verdict without findings has no headline', () => {
  const unknown = finding('region', 'cannot-tell')
  expect(headline(verdict('cannot-tell', finding('land', 'holds', 9), unknown))).toBe(unknown)
  expect(headline(verdict('holds'))).toBeUndefined()
})
