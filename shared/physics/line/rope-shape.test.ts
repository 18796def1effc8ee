import { expect, test } from 'vitest'
import { solveLine } from './line'
import { lumpedFloat, plainLine } from './line-samples'
import { lengthAbove, pointsFromPot } from './rope-shape'

test('rope drawn above the surface is that whose middle is, rope just at it is not', () => {
  // Along the surface, up 2 m, over and up 5 m, down 8 m to 2 m below it, and on down.
  const shape = [0, 10, 4, 10, 4, 12, 7, 16, 7, 8, 7, 0]
  expect(lengthAbove(shape, 10)).toBe(2 + 5 + 8)
  expect(lengthAbove(shape, 16)).toBe(0)
  expect(lengthAbove([], 10)).toBe(0)
})

test('points run from the float to the pot, the slack first, none above the surface', () => {
  const shape = [0, 10, -1, 11, -2, 0]
  expect([...pointsFromPot(shape, 0, 2, 10)]).toEqual([2, 10, 1, 10, 0, 0])
  expect([...pointsFromPot(shape, 3, 5, 10)]).toEqual([5, 10, 2, 10, 1, 10, 0, 0])
})

test('a rough line keeps no shape, with slack or without', () => {
  for (const surfaceCurrentMps of [0.02, 0.8]) {
    const line = plainLine({ surfaceCurrentMps, ropeWetWeightNpm: -0.1, float: lumpedFloat(40, 0.02) })
    const [fine, rough] = [solveLine(line), solveLine(line, 'rough')]
    if (fine.state === 'failed' || rough.state === 'failed') throw new Error('no balance')
    expect(fine.shape.length).toBeGreaterThan(40)
    expect(rough.shape).toHaveLength(0)
    expect(rough.slackSurfaceM > 0).toBe(surfaceCurrentMps < 0.1)
  }
})
