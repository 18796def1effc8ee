import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { defaultCoefficients } from '@shared/physics/coefficients'
import { readPacks } from '@shared/rules/packs'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { expect, test } from 'vitest'
import { fullCheck } from './full-check'
import { legalSizes } from './legal-sizes'

const standard = starterPots[1]
if (!standard) throw new Error('no standard pot')
const tables = { materials: builtInMaterials, coefficients: defaultCoefficients }
const water: Water = {
  format: 'potwright/water',
  version: 1,
  id: 'w',
  name: 'Test water',
  depthM: 8,
  bottom: 'sand',
  tide: { source: 'range', springM: 2 },
  current: { source: 'fixed', mps: 0.5 },
}
const trip: Trip = {
  format: 'potwright/trip',
  version: 1,
  date: '2026-12-05',
  region: 'US-WA',
  species: ['metacarcinus-magister'],
  soakH: 6,
  people: 1,
  boat: true,
}
const washington = readPacks().get('US-WA')

test('nothing but a pot: every verdict that needs more says what is missing', () => {
  const { verdicts } = fullCheck({ pot: standard, ...tables })
  for (const name of ['legal', 'holdsBottom', 'floatShows'] as const) {
    expect(verdicts[name].state, name).toBe('cannot-tell')
    expect(
      verdicts[name].findings.some((finding) => finding.missing),
      name,
    ).toBe(true)
  }
})

test('a region without a pack is named as missing', () => {
  const { verdicts } = fullCheck({ pot: standard, ...tables, trip: { ...trip, region: 'IS' } })
  expect(verdicts.legal.findings[0]?.missing).toBe('rules for IS')
})

test('rules, water and trip each reach their verdict', () => {
  const { verdicts } = fullCheck({ pot: standard, ...tables, trip, water, pack: washington })
  expect(verdicts.legal.findings.some((finding) => finding.rule.startsWith('US-WA:'))).toBe(true)
  expect(verdicts.holdsBottom.figures).toHaveProperty('slideCurrentMps')
  expect(verdicts.fishes.findings.some((finding) => finding.rule === 'fishes:crab-size')).toBe(false)
})

test('the least legal size comes from the pack in millimetres, only for the crab sought', () => {
  if (!washington) throw new Error('no pack')
  const [dungeness, ...others] = legalSizes(washington, { ...trip, zone: 'puget-sound' })
  expect(others).toEqual([])
  expect(dungeness?.species).toBe('metacarcinus-magister')
  expect(dungeness?.sizeMm).toBeCloseTo(6.25 * 25.4, 6)
  expect(legalSizes(washington, { ...trip, species: [] })).toEqual([])
})

test('how a pot lands is told alike wherever it is told, in fresh water too', () => {
  for (const heightMm of [10, 60, 90, 120, 160, 200, 260, 320])
    for (const salinityPsu of [0, 36]) {
      const pot = { ...standard, ballast: [{ material: 'lead', massKg: 2, heightMm }] }
      const there: Water = { ...water, salinityPsu, temperatureC: 10 }
      const { verdicts } = fullCheck({ pot, ...tables, trip, water: there, pack: washington })
      const lands = verdicts.holdsBottom.findings.find(({ rule }) => rule === 'bottom:lands')
      const sits = verdicts.fishes.findings.find(({ rule }) => rule === 'fishes:base-down')
      expect(lands?.state).toBe(sits?.state)
    }
  const upright = fullCheck({ pot: standard, ...tables, trip, water, pack: washington })
  expect(upright.verdicts.holdsBottom.findings.some(({ rule }) => rule === 'bottom:lands')).toBe(true)
})
