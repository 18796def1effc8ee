import { starterPots } from '@shared/design/starter-pots'
import { expect, test } from 'vitest'
import { letterOf, openingSchedule } from './opening-schedule'
import { potViews } from './pot-views'

const pot = (id: string) => {
  const found = starterPots.find((one) => one.id === `starter-${id}`)
  if (!found) throw new Error(id)
  return found
}
const view = (id: string, name: string) => {
  const found = potViews(pot(id)).find((one) => one.view === name)
  if (!found) throw new Error(name)
  return found
}

test('a straight round 900 by 320 shows those sizes, and its ring seen from above is a circle', () => {
  const sizes = view('standard', 'side').sizes.map((size) => [size.side, Math.round(size.valueM * 1000)])
  expect(sizes).toEqual([
    ['below', 900],
    ['right', 320],
  ])
  const ring = view('standard', 'above').lines.find((line) => line.part === 'base-ring')
  expect(ring?.closed).toBe(true)
  for (const [x, y] of ring?.points ?? []) expect(Math.hypot(x, y)).toBeCloseTo(0.45, 2)
  expect(ring?.widthM).toBeCloseTo(0.012, 6)
})

test('the middle ring of the heavy pot is set out by its height above the base', () => {
  const left = view('heavy', 'side').sizes.filter((size) => size.side === 'left')
  expect(left.map((size) => size.valueM)).toEqual([0.16])
})

test('an entrance at the front has its letter in the front view, its fellow at the back has not', () => {
  const [front, back] = openingSchedule(pot('standard'))
  expect([front?.bearingDeg, back?.bearingDeg]).toEqual([0, 180])
  const letters = view('standard', 'front').letters.map((one) => one.letter)
  expect(letters).toContain(front?.letter)
  expect(letters).not.toContain(back?.letter)
  // Seen from above both stand outside the wall, on their own bearing.
  const above = Object.fromEntries(view('standard', 'above').letters.map((one) => [one.letter, one.at]))
  expect(above[front?.letter ?? '']?.[0]).toBeGreaterThan(0.45)
  expect(above[back?.letter ?? '']?.[0]).toBeLessThan(-0.45)
})

test('a gap at bearing 45 stands to the right as seen from the side at bearing 90', () => {
  const gap = openingSchedule(pot('standard')).find((row) => row.part === 'escape-gaps')
  expect(gap).toMatchObject({ round: true, bearingDeg: 45, lowerEdgeM: 0.19 })
  expect(gap?.widthM).toBeCloseTo(0.108)
  const seen = view('standard', 'side').letters.find((one) => one.letter === gap?.letter)
  expect(seen?.at[0]).toBeGreaterThan(0.2)
})

test('a box is set out by length, width and height', () => {
  expect(view('box', 'above').sizes.map((size) => size.valueM)).toEqual([0.609, 0.609])
  expect(view('box', 'front').sizes.map((size) => size.valueM)).toEqual([0.609])
})

test('letters go on after Z', () => {
  expect([0, 25, 26, 27, 52].map(letterOf)).toEqual(['A', 'Z', 'AA', 'AB', 'BA'])
})
