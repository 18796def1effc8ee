import { expect, test } from 'vitest'
import { goldenCases } from '../../tests/fixtures/golden'
import { comparePacks } from './compare'
import { coverage, isOlderThanAYear } from './coverage'
import { figuresOf, withFigure } from './figures'
import { readPacks } from './packs'
import { whereLegal } from './where-legal'

const packs = readPacks()
const pack = (region: string) => {
  const found = packs.get(region)
  if (!found) throw new Error(`no pack ${region}`)
  return found
}

test('two regions side by side: the float is asked for larger in one, and the row says so', () => {
  const rows = comparePacks([pack('AU-QLD'), pack('AU-NSW')])
  const float = rows.find((row) => row.quantity === 'float.smallest-side')
  expect(float?.differs).toBe(true)
  expect(float?.cells.map((cell) => cell.rules.map((rule) => rule.id))).toEqual([
    ['qld-float-size'],
    ['nsw-float-size'],
  ])
  const gaps = rows.find((row) => row.subject === 'escape-gaps')
  expect(gaps?.cells.map((cell) => cell.state)).toEqual(['not-found', 'not-found'])
})

test('a region beside itself differs nowhere, and every rule stands in one row', () => {
  const rows = comparePacks([pack('US-WA'), pack('US-WA')])
  expect(rows.filter((row) => row.differs)).toEqual([])
  const ids = rows.flatMap((row) => row.cells[0]?.rules.map((rule) => rule.id) ?? [])
  expect(ids.toSorted()).toEqual(
    pack('US-WA')
      .rules.map((rule) => rule.id)
      .toSorted(),
  )
})

test('coverage counts each fact once', () => {
  for (const one of packs.values()) {
    const { checked, shown, unknown } = coverage(one)
    expect(checked.length + shown.length + unknown.length).toBe(one.rules.length + one.notFound.length)
  }
})

test('a pack is old a year and a day after it was checked', () => {
  expect(isOlderThanAYear(pack('US-WA'), '2027-11-25')).toBe(false)
  expect(isOlderThanAYear(pack('US-WA'), '2027-11-26')).toBe(true)
})

test('one design against every region: legal at home, refused elsewhere with the rule named', () => {
  const golden = goldenCases.find((one) => one.region === 'US-WA' && one.fails.length === 0)
  if (!golden) throw new Error('no golden pot')
  const regions = whereLegal([...packs.values()], { pot: golden.pot, trip: golden.trip, now: '2026-12-05' })
  expect(regions).toHaveLength(packs.size)
  const state = (region: string) => regions.find((one) => one.region === region)
  expect(state('US-WA')?.state).toBe('holds')
  expect(state('US-MD')?.state).toBe('fails')
  expect(state('US-MD')?.reasons.map((reason) => reason.rule)).toContain('US-MD:pot-side')
  const ranks = regions.map((one) => ['holds', 'close', 'cannot-tell', 'fails'].indexOf(one.state))
  expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
})

test('every figure of a check can be found and changed in its place', () => {
  const check = pack('US-MD').rules.find((rule) => rule.id === 'US-MD:cull-b')?.check
  if (!check) throw new Error('no check')
  const paths = figuresOf(check).map((figure) => figure.path)
  expect(paths).toEqual(['each.0.count', 'each.0.where.value', 'each.1.count', 'each.1.where.value'])
  const changed = withFigure(check, 'each.1.where.value', 2.5)
  expect(changed && figuresOf(changed).map((figure) => figure.value)).toEqual([1, 2.1875, 1, 2.5])
})
