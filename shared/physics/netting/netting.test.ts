import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { between } from '@shared/numerics/even-samples'
import { aarsnes } from './aarsnes'
import { fridmanPanel } from './fridman-panel'
import { kristiansenFaltinsen, twineDrag } from './kristiansen-faltinsen'
import { loland } from './loland'
import { squareNettingMass } from './mass'
import { isWithin } from './screen-coefficient'
import { screenCoefficient, screenModels, screenRange, screenWithin } from './screen'
import { diamondMeshSolidity, knottedMeshSolidity, squareMeshSolidity } from './solidity'
import { milneTwineDrag } from './twine-drag'
import { angledWake, lolandWake, speedBehind } from './wake'

const flow = { solidity: 0.2, speedMps: 0.5, twineDiameterM: 0.002, viscosity: 1.35e-6 }

describe('solidity', () => {
  test('a diamond hung at 0.7071 is the square mesh', () => {
    fc.assert(
      fc.property(between(0.0003, 0.008), between(0.02, 0.2), (d, a) => {
        expect(diamondMeshSolidity(d, a, Math.SQRT1_2)).toBeCloseTo(squareMeshSolidity(d, a), 12)
      }),
    )
  })
  test('knots add to it: 2 mm twine on 25 mm bars', () => {
    expect(knottedMeshSolidity(0.002, 0.025)).toBeCloseTo(0.1632, 10)
    expect(squareMeshSolidity(0.002, 0.025)).toBeCloseTo(0.1536, 10)
  })
  test('is full once the bars touch, and never more', () => {
    expect(squareMeshSolidity(0.006, 0.005)).toBe(1)
    expect(knottedMeshSolidity(0.006, 0.005)).toBe(1)
    expect(diamondMeshSolidity(0.006, 0.005, 0.5)).toBe(1)
    expect(diamondMeshSolidity(0.01, 0.05, 0.2)).toBeCloseTo(1.0206207 - 0.2604167, 6)
  })
  test.each([
    [0, 0.02, 0.5],
    [0.002, 0, 0.5],
    [0.002, 0.02, 0],
    [0.002, 0.02, 1],
    [Infinity, 0.02, 0.5],
  ])('twine %d on bar %d hung at %d is refused', (d, a, e) => {
    expect(() => diamondMeshSolidity(d, a, e)).toThrow(RangeError)
  })
  test('square and knotted refuse impossible sizes too', () => {
    expect(() => squareMeshSolidity(-1, 0.02)).toThrow('twine -1 m')
    expect(() => knottedMeshSolidity(0.002, 0)).toThrow(RangeError)
  })
})

describe('screen models', () => {
  test('the fits differ by about a tenth at solidity 0.2, Fridman lies highest', () => {
    expect(loland(0.2, 0).cd / aarsnes(0.2, 0).cd).toBeCloseTo(1.11, 2)
    expect(kristiansenFaltinsen(flow, 0).cd).toBeCloseTo(0.287, 3)
    const re = (flow.speedMps * flow.twineDiameterM) / flow.viscosity
    expect(fridmanPanel(re, 0.2).normal).toBeCloseTo(0.354, 2)
    expect(fridmanPanel(re, 0.2).tangential).toBeCloseTo(0.1 * re ** 0.14 * 0.2, 12)
    expect(() => fridmanPanel(0, 0.2)).toThrow(RangeError)
    expect(() => fridmanPanel(100, 0)).toThrow(RangeError)
  })
  test('along the panel only friction is left, and no lift', () => {
    expect(aarsnes(0.25, Math.PI / 2).cd).toBeCloseTo(0.04, 12)
    expect(aarsnes(0.25, Math.PI / 2).cl).toBeCloseTo(0, 12)
    expect(loland(0.25, Math.PI / 2).cd).toBeCloseTo(0.04, 12)
    expect(kristiansenFaltinsen(flow, Math.PI / 2).cd).toBeCloseTo(0, 12)
  })
  test('face-on there is no lift, at an angle it is symmetric about 45 degrees in the cubic fits', () => {
    for (const model of [aarsnes, loland]) {
      expect(model(0.2, 0).cl).toBe(0)
      expect(model(0.2, Math.PI / 6).cl).toBeCloseTo(model(0.2, Math.PI / 3).cl, 12)
    }
  })
  test('the cylinder curve holds its ends', () => {
    expect(twineDrag(1)).toBe(twineDrag(10 ** 1.5))
    expect(twineDrag(1e6)).toBe(twineDrag(1e4))
    expect(twineDrag(1000)).toBeCloseTo(0.98, 1)
  })
  test('each model reports its range', () => {
    expect(screenRange('aarsnes')).toEqual({ least: 0.13, most: 0.35 })
    expect(screenRange('kristiansen-faltinsen').most).toBe(0.5)
    expect([0.12, 0.13, 0.35, 0.36].map((sn) => isWithin(screenRange('loland'), sn))).toEqual([
      false,
      true,
      true,
      false,
    ])
  })
  test('inside the range the screen is the model itself', () => {
    expect(screenCoefficient('aarsnes', flow, 0.5)).toEqual(aarsnes(0.2, 0.5))
    expect(screenCoefficient('loland', flow, 0.5)).toEqual(loland(0.2, 0.5))
    expect(screenCoefficient('kristiansen-faltinsen', flow, 0.5)).toEqual(kristiansenFaltinsen(flow, 0.5))
  })
  test('beyond the range drag goes on growing up to a solid plate, and no further', () => {
    const at = (solidity: number) => screenCoefficient('aarsnes', { ...flow, solidity }, 0).cd
    expect(at(0.35 + 1e-9)).toBeCloseTo(at(0.35), 6)
    expect(at(0.4) / at(0.35)).toBeCloseTo((0.4 * 1.6 * 0.65 ** 2) / (0.35 * 1.65 * 0.6 ** 2), 12)
    expect(at(0.7)).toBe(1.17)
    expect(at(1)).toBe(1.17)
  })
  test('drag grows with solidity whatever the model and angle', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...screenModels),
        between(0.03, 0.95),
        between(0, 1.2),
        (model, solidity, alpha) => {
          const less = screenCoefficient(model, { ...flow, solidity }, alpha).cd
          const more = screenCoefficient(model, { ...flow, solidity: solidity + 0.02 }, alpha).cd
          expect(more).toBeGreaterThanOrEqual(less - 1e-12)
          expect(less).toBeGreaterThanOrEqual(0)
          expect(more).toBeLessThanOrEqual(1.17)
        },
      ),
    )
  })
  test('the spread runs from the lowest of the models over the chosen one to the highest', () => {
    const each = screenModels.map((model) => screenCoefficient(model, flow, 0).cd)
    expect(screenWithin('aarsnes', flow, 0, 0)).toEqual(aarsnes(0.2, 0))
    expect(screenWithin('aarsnes', flow, 0, 1).cd).toBeCloseTo(Math.max(...each), 12)
    expect(screenWithin('loland', flow, 0, -1).cd).toBeCloseTo(Math.min(...each), 12)
    expect(screenWithin('aarsnes', flow, 0, 0.5).cd).toBeCloseTo((0.26 + Math.max(...each)) / 2, 9)
    const tilted = screenWithin('aarsnes', flow, 0.6, 1)
    const chosen = aarsnes(0.2, 0.6)
    expect(tilted.cl / tilted.cd).toBeCloseTo(chosen.cl / chosen.cd, 12)
  })
  test('netting without twine has no drag in the spread', () => {
    const none = screenWithin('kristiansen-faltinsen', { ...flow, solidity: 0 }, 0, -1)
    expect(none).toEqual({ cd: 0, cl: 0 })
  })
})

describe('wake', () => {
  test('panels in line multiply down to one half', () => {
    expect(speedBehind(0.88, 0)).toBe(1)
    expect(speedBehind(0.88, 1)).toBe(0.88)
    expect(speedBehind(0.88, 2)).toBeCloseTo(0.7744, 12)
    expect(speedBehind(0.88, 9)).toBe(0.5)
  })
  test('never runs backwards', () => {
    expect(lolandWake(3)).toBe(0)
    expect(lolandWake(1, 0.4)).toBeCloseTo(0.6, 12)
    expect(angledWake(1, Math.PI / 2)).toBe(0)
  })
})

describe('twine and netting by weight', () => {
  test('drag on the twine itself, with and without knots', () => {
    expect(milneTwineDrag(0.1, false)).toBeCloseTo(1.3042, 10)
    expect(milneTwineDrag(0.1, true)).toBeCloseTo(1.4707, 10)
  })
  test('knots add to the mass', () => {
    expect(squareNettingMass(2000, 0.025, 1.15)).toBeCloseTo(0.184, 12)
    expect(() => squareNettingMass(2000, 0)).toThrow(RangeError)
  })
})
