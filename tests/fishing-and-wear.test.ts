import { fishingModels } from '@shared/fishing/verify'
import { wearModels } from '@shared/wear/verify'
import { expect, test } from 'vitest'
import published from './reference/fishing-and-wear-values.json'

const models = { ...fishingModels, ...wearModels }

test.each(published.vectors.map((vector) => [vector.id, vector] as const))(
  '%s agrees with its published value',
  (_, { model, inputs, expected, tolerance }) => {
    const compute = models[model]
    expect(compute, model).toBeDefined()
    const value = compute?.(inputs as Record<string, unknown>) ?? NaN
    // The tolerance is inclusive; a zero tolerance means exact.
    expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance)
  },
)

test('every model of fishing and wear has a published value', () => {
  const checked = new Set(published.vectors.map((vector) => vector.model))
  expect(Object.keys(models).filter((model) => !checked.has(model))).toEqual([])
})
