import * as v from 'valibot'
import { describe, expect, test } from 'vitest'
import { VectorFileSchema, vectorsOf } from '@shared/schema/vector'
import raw from '../../../tests/reference/check-values.json'
import { physicsModels } from './registry'
import { verifyVectors } from './verify'

const vectors = vectorsOf(v.parse(VectorFileSchema, raw))

describe('published and recomputed values', () => {
  test.each(vectors.map((vector) => [vector.id, vector] as const))('%s', (_, vector) => {
    const { failed, unknown } = verifyVectors([vector], physicsModels)
    expect(failed).toEqual([])
    expect(unknown).toEqual([])
  })

  test('all 143 of them, each with its source and its kind', () => {
    expect(verifyVectors(vectors, physicsModels).passed).toHaveLength(143)
    expect(vectors.every((vector) => vector.source && vector.kind)).toBe(true)
    expect(vectors.filter((vector) => vector.kind === 'published').length).toBeGreaterThan(40)
  })

  test('every model is exercised by a vector', () => {
    const named = new Set(vectors.map((vector) => vector.model))
    expect(Object.keys(physicsModels).filter((key) => !named.has(key))).toEqual([])
  })
})

describe('verification', () => {
  const vector = { id: 'a', model: 'double', inputs: { x: 2 }, expected: 4, tolerance: 0.1 }
  const registry = {
    double: (inputs: Readonly<Record<string, unknown>>) => 2 * Number(inputs['x']),
    refuses: () => {
      throw new RangeError('too deep')
    },
    breaks: () => {
      throw new TypeError('a bug')
    },
    none: () => NaN,
  }
  test('passes within the tolerance and not beyond', () => {
    expect(verifyVectors([vector], registry).passed).toEqual(['a'])
    expect(verifyVectors([{ ...vector, expected: 4.1 }], registry).passed).toEqual(['a'])
    expect(verifyVectors([{ ...vector, expected: 4.1001 }], registry).failed).toEqual([
      { id: 'a', model: 'double', expected: 4.1001, tolerance: 0.1, actual: 4 },
    ])
  })
  test('a refusal is a failure with its reason, a bug is thrown, no number never passes', () => {
    expect(verifyVectors([{ ...vector, model: 'refuses' }], registry).failed).toMatchObject([
      { reason: 'too deep' },
    ])
    expect(() => verifyVectors([{ ...vector, model: 'breaks' }], registry)).toThrow(TypeError)
    expect(verifyVectors([{ ...vector, model: 'none', tolerance: 1e9 }], registry).passed).toEqual([])
  })
  test('an unknown model is named, even one that every object has', () => {
    expect(verifyVectors([{ ...vector, model: 'toString' }], registry).unknown).toEqual([
      { id: 'a', model: 'toString' },
    ])
  })
  test.each([
    ['lift.guideline-men', { zone: 'over the moon' }, 'over the moon'],
    ['lift.guideline-women', { reach: 'at a stretch' }, 'at a stretch'],
    ['line.pull-under-current', { float_net_buoyancy_N: 1e7 }, 'not drawn under'],
    ['line.sunk-float-dip', { rope_length_m: 0 }, 'no length'],
  ])('%s with %j is refused with the reason', (model, change, words) => {
    const known = vectors.find((each) => each.model === model)
    const changed = { ...vector, model, inputs: { ...known?.inputs, ...change } }
    expect(verifyVectors([changed], physicsModels).failed[0]?.reason).toContain(words)
  })
  test('a missing input or an input of the wrong kind is a refusal that names it', () => {
    const missing = { ...vector, model: 'wave.length', inputs: { period_s: '8' } }
    expect(verifyVectors([missing], physicsModels).failed[0]?.reason).toContain('period_s')
  })
})
