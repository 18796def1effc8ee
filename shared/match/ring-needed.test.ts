import { describe, expect, test } from 'vitest'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { defaultCoefficients } from '@shared/physics/coefficients'
import type { Pot } from '@shared/schema/pot'
import type { Water } from '@shared/schema/water'
import { conditionsAt } from '@shared/tides/conditions'
import { barSizesMm } from '@shared/verdicts/single-changes'
import { holdsBottom } from '@shared/verdicts/holds-bottom'
import { prepare } from '@shared/verdicts/prepared'
import { ringNeeded, staysCautiously, withBaseRing } from './ring-needed'

const water: Water = {
  format: 'potwright/water',
  version: 1,
  id: 'w',
  name: 'Heron Narrows',
  depthM: 8,
  bottom: 'sand',
}
const [, standard] = starterPots
const inputAt = (mps: number, pot: Pot) => ({
  pot,
  materials: builtInMaterials,
  coefficients: defaultCoefficients,
  conditions: conditionsAt({ ...water, current: { source: 'fixed', mps } }),
})

describe('base ring that a channel asks for', () => {
  if (!standard) throw new Error('no pot')

  test('holds with the bar named, and does not with the next thinner one', () => {
    for (const mps of [0.3, 0.5, 0.7]) {
      const answer = ringNeeded(inputAt(mps, standard))
      if (answer.kind !== 'bar') throw new Error(`no ring at ${mps} m/s`)
      const holdsWith = (bar: number) =>
        staysCautiously(holdsBottom(prepare(inputAt(mps, withBaseRing(standard, bar)))))
      expect(holdsWith(answer.barDiameterMm)).toBe(true)
      const thinner = barSizesMm[barSizesMm.findIndex((size) => size === answer.barDiameterMm) - 1]
      if (thinner !== undefined) expect(holdsWith(thinner)).toBe(false)
      expect(answer.ringMassKg).toBeGreaterThan(0)
    }
  })

  test('a stronger channel asks for no lighter a ring', () => {
    const bars = [0.2, 0.4, 0.6, 0.8].map((mps) => {
      const answer = ringNeeded(inputAt(mps, standard))
      return answer.kind === 'bar' ? answer.barDiameterMm : Infinity
    })
    expect(bars).toEqual([...bars].sort((a, b) => a - b))
  })

  test('no ring holds in a race, and an unknown current cannot be told', () => {
    expect(ringNeeded(inputAt(4, standard)).kind).toBe('none')
    const unknown = { ...inputAt(1, standard), conditions: conditionsAt(water) }
    expect(ringNeeded(unknown)).toMatchObject({ kind: 'cannot-tell' })
    expect(ringNeeded(inputAt(0.3, { ...standard, frame: [] }))).toMatchObject({
      kind: 'cannot-tell',
      missing: 'the base ring',
    })
  })

  test('a mass from the scales is left behind with the old ring', () => {
    expect(withBaseRing({ ...standard, measuredMassKg: 9 }, 20).measuredMassKg).toBeUndefined()
  })
})
