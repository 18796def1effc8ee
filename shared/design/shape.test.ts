import { expect, test } from 'vitest'
import {
  baseArea,
  girthAt,
  reachAt,
  sideOutlineArea,
  sideOutlineCentre,
  slantLength,
  wallArea,
  wallCentreHeight,
  type PotShape,
} from './shape'

const turned = (base: number, top: number, heightM: number, dome = false): PotShape => ({
  kind: 'turned',
  dome,
  baseRadiusM: base,
  topRadiusM: top,
  heightM,
})

test('a cylinder: 2πrh, 2rh, middle at half height', () => {
  const shape = turned(0.45, 0.45, 0.32)
  expect(wallArea(shape)).toBeCloseTo(2 * Math.PI * 0.45 * 0.32, 10)
  expect(sideOutlineArea(shape)).toBeCloseTo(0.9 * 0.32, 10)
  expect(sideOutlineCentre(shape)).toBeCloseTo(0.16, 10)
  expect(wallCentreHeight(shape)).toBeCloseTo(0.16, 10)
  expect(girthAt(shape, 0.1)).toBeCloseTo(Math.PI * 0.9, 10)
})

test('a 3-4-5 cone: slant 0.5, area π (r+R) s', () => {
  const shape = turned(0.4, 0.1, 0.4)
  expect(slantLength(shape)).toBeCloseTo(0.5, 10)
  expect(wallArea(shape)).toBeCloseTo(Math.PI * 0.5 * 0.5, 10)
  expect(reachAt(shape, 1, 0.2)).toBeCloseTo(0.25, 10)
  // Trapezium 0.8 and 0.2 wide: centre at h/3 (a + 2b)/(a + b) from the wide side.
  expect(sideOutlineCentre(shape)).toBeCloseTo((0.4 / 3) * (1.2 / 1.0), 10)
})

test('a half ball: 2πr² of wall within half a percent, πr²/2 from the side', () => {
  const shape = turned(0.4, 1e-9, 0.4, true)
  expect(wallArea(shape) / (2 * Math.PI * 0.16)).toBeCloseTo(1, 2)
  expect(sideOutlineArea(shape) / ((Math.PI * 0.16) / 2)).toBeCloseTo(1, 2)
  expect(sideOutlineCentre(shape)).toBeCloseTo((4 * 0.4) / (3 * Math.PI), 2)
})

test('a box: four sides, and its reach meets the corner', () => {
  const shape: PotShape = { kind: 'box', lengthM: 0.8, widthM: 0.6, heightM: 0.3 }
  expect(wallArea(shape)).toBeCloseTo(2 * 1.4 * 0.3, 10)
  expect(baseArea(shape)).toBeCloseTo(0.48, 10)
  expect(reachAt(shape, Math.atan2(3, 4), 0.1)).toBeCloseTo(0.5, 10)
  expect(reachAt(shape, Math.PI / 2, 0.1)).toBeCloseTo(0.3, 10)
})
