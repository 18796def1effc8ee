import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { between } from '@shared/numerics/even-samples'
import { floatDraft, floatDragArea, floatHeight, floatVolume, netBuoyancy, sunkDragArea } from './float'
import type { FloatBody } from './float-body'
import { sphereDraft, sphereSideArea } from './sphere'

type SolidFloat = Exclude<FloatBody, { shape: 'lumped' }>

const sphere: SolidFloat = { shape: 'sphere', diameterM: 0.2, massKg: 0.4, cd: 0.5, cdAwash: 0.3 }
const cylinder: SolidFloat = {
  shape: 'cylinder',
  diameterM: 0.15,
  lengthM: 0.35,
  massKg: 0.5,
  cd: 0.8,
  cdAwash: 0.2,
}
const bullet: SolidFloat = { ...cylinder, shape: 'bullet' }
const short: SolidFloat = { ...bullet, lengthM: 0.12 }
/** Too short for a round end. */
const stub: SolidFloat = { ...bullet, lengthM: 0.05 }
const lumped: FloatBody = { shape: 'lumped', netBuoyancyN: 12, dragAreaM2: 0.03 }
const solids = [sphere, cylinder, bullet, short, stub]

/** Volume below a draft by thin slices of the shape. */
function slicedVolume(body: SolidFloat, draft: number): number {
  const radius = body.diameterM / 2
  const round = body.shape === 'sphere' || (body.shape === 'bullet' && body.lengthM >= radius)
  const count = 10_000
  let volume = 0
  for (let i = 0; i < count; i += 1) {
    const y = ((i + 0.5) * draft) / count
    const inEnd = round && (body.shape === 'sphere' || y < radius)
    const square = inEnd ? radius ** 2 - (radius - y) ** 2 : radius ** 2
    volume += (Math.PI * square * draft) / count
  }
  return volume
}

describe('floats', () => {
  test.each([
    [0.1, 5.27],
    [0.15, 17.8],
    [0.2, 42.1],
    [0.25, 82.3],
    [0.3, 142.2],
    [0.36, 245.6],
  ])('a ball of %d m displaces %d N of sea water', (diameterM, force) => {
    expect(netBuoyancy({ ...sphere, diameterM, massKg: 0 }, 1025) / force).toBeCloseTo(1, 2)
  })

  test('volumes', () => {
    expect(floatVolume(cylinder)).toBeCloseTo((Math.PI / 4) * 0.15 ** 2 * 0.35, 12)
    expect(floatVolume(bullet)).toBeCloseTo((Math.PI / 4) * 0.15 ** 2 * (0.35 - 0.025), 12)
    expect(floatVolume(stub)).toBeCloseTo((Math.PI / 4) * 0.15 ** 2 * 0.05, 12)
    expect([floatHeight(sphere), floatHeight(bullet), floatHeight(lumped)]).toEqual([0.2, 0.35, 0])
  })

  test('a float settles until it displaces itself and its load', () => {
    fc.assert(
      fc.property(between(0, 1), (share) => {
        for (const body of solids) {
          const load = share * netBuoyancy(body, 1025)
          const displaced = slicedVolume(body, floatDraft(body, load, 1025))
          expect(displaced * 1025 * 9.81).toBeCloseTo(load + body.massKg * 9.81, 3)
        }
      }),
      { numRuns: 20 },
    )
  })

  test('loaded with all its buoyancy it is just under, and its drag joins that of the float under', () => {
    for (const body of solids.slice(0, 4)) {
      const full = netBuoyancy(body, 1025)
      expect(floatDraft(body, full, 1025)).toBeCloseTo(floatHeight(body), 6)
      expect(floatDraft(body, 10 * full, 1025)).toBeCloseTo(floatHeight(body), 9)
      expect(floatDragArea(body, full, 1025)).toBeCloseTo(sunkDragArea(body), 6)
    }
  })

  test('drag areas under', () => {
    expect(sunkDragArea(sphere)).toBeCloseTo((0.5 * Math.PI * 0.2 ** 2) / 4, 12)
    expect(sunkDragArea(cylinder)).toBeCloseTo(0.8 * 0.15 * 0.35, 12)
    const nose = (Math.PI * 0.075 ** 2) / 2
    expect(sunkDragArea(bullet)).toBeCloseTo(0.8 * (nose + 0.15 * (0.35 - 0.075)), 12)
    expect(sunkDragArea(stub)).toBeCloseTo(0.8 * 0.15 * 0.05, 12)
  })

  test('half in, a ball shows half its side and makes the most waves', () => {
    const half = { ...sphere, massKg: 0 }
    const load = netBuoyancy(half, 1025) / 2
    expect(floatDraft(half, load, 1025)).toBeCloseTo(0.1, 9)
    expect(floatDragArea(half, load, 1025)).toBeCloseTo((0.5 + 0.3) * (Math.PI / 8) * 0.2 ** 2, 9)
    expect(floatDragArea({ ...half, cdAwash: 0 }, load, 1025)).toBeCloseTo(0.5 * (Math.PI / 8) * 0.2 ** 2, 9)
  })

  test('a float known only by its figures', () => {
    expect(netBuoyancy(lumped, 1000)).toBe(12)
    expect(floatVolume(lumped)).toBe(0)
    expect(floatDraft(lumped, 5, 1025)).toBe(0)
    expect([floatDragArea(lumped, 5, 1025), sunkDragArea(lumped)]).toEqual([0.03, 0.03])
  })

  test('ends of the sphere', () => {
    expect([sphereDraft(0.1, -1), sphereDraft(0.1, 0), sphereDraft(0.1, 1)]).toEqual([0, 0, 0.2])
    expect(sphereSideArea(0.1, -1)).toBe(0)
    expect(sphereSideArea(0.1, 9)).toBeCloseTo(Math.PI * 0.01, 12)
    expect(sphereSideArea(0.1, 0.05)).toBeCloseTo(0.01 * Math.acos(0.5) - 0.05 * Math.sqrt(0.0075), 12)
  })
})
