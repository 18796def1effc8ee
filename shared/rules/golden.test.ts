import { describe, expect, test } from 'vitest'
import { goldenCases } from '../../tests/fixtures/golden'
import { judge } from './judge'
import { readPacks } from './packs'

const packs = readPacks()

describe.each([...packs])('%s', (region, pack) => {
  const cases = goldenCases.filter((one) => one.region === region)

  test.each(cases)('$name', (golden) => {
    const { findings } = judge(pack, golden)
    const inState = (state: string) =>
      findings
        .filter((one) => one.state === state && !one.rule.endsWith(':not-found'))
        .map((one) => one.rule)
        .toSorted()
    expect({
      fails: inState('fails'),
      cannotTell: inState('cannot-tell'),
      close: inState('close'),
    }).toEqual({
      fails: golden.fails.toSorted(),
      cannotTell: golden.cannotTell.toSorted(),
      close: golden.close.toSorted(),
    })
  })

  test('has a pot that meets every rule, and two that break some where any can be checked', () => {
    const canBreak = pack.rules.some((rule) => rule.check !== undefined)
    expect(cases.some((one) => one.fails.length === 0 && one.cannotTell.length === 0)).toBe(true)
    expect(cases.filter((one) => one.fails.length > 0).length).toBeGreaterThanOrEqual(canBreak ? 2 : 0)
  })
})
