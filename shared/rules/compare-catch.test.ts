import { expect, test } from 'vitest'
import type { RulePack } from '@shared/schema/rule-pack'
import { compareCatch } from './compare-catch'
import { readPacks } from './packs'

const packs = readPacks()
const pack = (region: string): RulePack => {
  const found = packs.get(region)
  if (!found) throw new Error(`no pack ${region}`)
  return found
}
const dungeness = 'metacarcinus-magister'

test('a species of several regions stands in one row, and one that a region does not name is empty there', () => {
  const rows = compareCatch([pack('US-WA'), pack('US-CA'), pack('AU-QLD')])
  const row = rows.find(({ slug }) => slug === dungeness)
  expect(row?.cells.map(({ species }) => species.length > 0)).toEqual([true, true, false])
  expect(row?.differs).toBe(true)
  expect(new Set(rows.map(({ slug }) => slug)).size).toBe(rows.length)
})

test('a region beside itself differs nowhere, however it is worded or sourced', () => {
  const base = pack('US-CA')
  const reworded = {
    ...base,
    species: base.species.map((one) => ({
      ...one,
      note: 'Another note.',
      sources: [0],
      sexRule: 'Other words.',
    })),
  }
  expect(compareCatch([base, reworded]).some(({ differs }) => differs)).toBe(false)
})

test('another size, way of measuring, number, sex or season differs', () => {
  const base = pack('US-CA')
  const one = base.species.find(({ slug, sizes }) => slug === dungeness && sizes.length > 0)
  const [size] = one?.sizes ?? []
  if (!one || !size) throw new Error('no species')
  const others = [
    { sizes: [{ ...size, min: (size.min ?? 0) + 1 }] },
    { measure: { ...one.measure, method: 'width-tip-to-tip' as const } },
    { bags: [] },
    { keep: { ...one.keep, female: 'not-found' as const } },
    { seasons: [{ from: '01-01', to: '02-01' }] },
  ]
  for (const other of others) {
    const changed = { ...base, species: base.species.map((it) => (it === one ? { ...it, ...other } : it)) }
    expect(compareCatch([base, changed]).find(({ slug }) => slug === dungeness)?.differs).toBe(true)
  }
})
