import { describe, expect, test } from 'vitest'
import { billOfMaterials } from '@shared/design/bill-of-materials'
import { massProperties } from '@shared/design/mass-properties'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { defaultCoefficients } from '@shared/physics/coefficients'
import { readPacks } from '@shared/rules/packs'
import type { Materials } from '@shared/schema/materials'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { dayMs } from '@shared/tides/signal'
import { barSizesMm } from '@shared/verdicts/single-changes'
import type { MatchSetting } from '../match'
import { matchWater } from '../match-water'
import { withBaseRing } from '../ring-needed'
import { failing } from './acceptance'
import { searchGear } from './gear-search'
import { carriedMass } from './objectives'
import { propose, type ProposeOutcome, type ProposeRequest } from './propose'
import { checkAt } from './request'
import { fitTrade } from './trade-fit'

const packs = readPacks()
const trip: Trip = {
  format: 'potwright/trip',
  version: 1,
  date: '2026-12-05',
  people: 2,
  licences: 2,
  boat: true,
  pots: 4,
  tiedOff: false,
  attended: false,
  soakH: 4,
  species: ['metacarcinus-magister'],
  stow: { lengthMm: 1200, widthMm: 1200, heightMm: 800, maxKg: 60 },
}
const placeWith = (mps: number, depthM = 8) => {
  const water: Water = {
    format: 'potwright/water',
    version: 1,
    id: `w-${mps}-${depthM}`,
    name: 'Heron Narrows',
    region: 'US-WA',
    depthM,
    bottom: 'sand',
    tide: { source: 'range', springM: 2, neapM: 1 },
    current: { source: 'fixed', mps },
  }
  return matchWater(water, {}, { fromMs: 0, toMs: 15 * dayMs })
}
// Few rows, so that every combination can be tried beside the search.
const few: Materials = {
  ...builtInMaterials,
  ropes: builtInMaterials.ropes.filter(({ id }) => id === 'pes-4' || id === 'pes-6'),
  floats: builtInMaterials.floats.filter(({ id }) => ['ball-100', 'ball-150', 'ball-200'].includes(id)),
}
const setting = (materials: Materials): MatchSetting => ({
  materials,
  coefficients: defaultCoefficients,
  trip,
  today: '2026-11-25',
  packFor: ({ region }) => packs.get(region ?? ''),
})
const [compact, standard] = starterPots
if (!compact || !standard) throw new Error('no shapes')

function answer(request: ProposeRequest): { outcome: ProposeOutcome; steps: number } {
  const search = propose(request)
  for (let steps = 0; ; steps++) {
    const step = search.next()
    if (step.done === true) return { outcome: step.value, steps }
  }
}

// Searches take seconds where the machine is busy.
const patience = { timeout: 120_000 }

describe('proposal', patience, () => {
  const places = [placeWith(0.2), placeWith(0.25, 5)]
  const request = { shapes: [standard, compact], places, setting: setting(few) }
  const { outcome, steps } = answer(request)
  const { lightest } = outcome

  test('passes every verdict cautiously at every place, and says what no part can settle', () => {
    if (!lightest) throw new Error('nothing proposed')
    expect(lightest.checks.map(({ waterId }) => waterId)).toEqual(places.map(({ water }) => water.id))
    for (const { check } of lightest.checks) {
      expect(failing(check, [])).toEqual([])
      for (const name of ['holdsBottom', 'floatShows', 'lifts', 'stows'] as const)
        expect(check.verdicts[name].state).toBe('holds')
    }
    expect(lightest.open.some((sentence) => sentence.includes('No rule was found'))).toBe(true)
  })

  test('is as light as the lightest of all combinations tried one by one', () => {
    const mass = carriedMass(few)
    const fitted = fitTrade(compact, places, request.setting)
    const deepest = 8 + 2.2
    let best = Infinity
    for (const { diameterMm } of few.ropes)
      for (const factor of [1.1, 1.25, 1.5, 1.75, 2, 2.5, 3])
        for (const row of few.floats)
          for (const bar of barSizesMm) {
            const { rope, float } = fitted
            if (!rope || !float) throw new Error('no tackle')
            const pot = {
              ...withBaseRing(fitted, bar),
              rope: { ...rope, diameterMm, lengthM: Math.ceil((deepest - 0.2) * factor + 2) },
              float: { ...float, diameterMm: row.diameterMm, massKg: row.massKg },
            }
            const kg = mass(pot) ?? Infinity
            if (
              kg < best &&
              places.every((place) => failing(checkAt(pot, place, request.setting), []).length === 0)
            )
              best = kg
          }
    expect(lightest?.carriedKg).toBeLessThanOrEqual(best * 1.02)
    expect(lightest?.carriedKg).toBeGreaterThanOrEqual(best * 0.98)
  })

  test('names what keeps it from being lighter', () => {
    expect(lightest?.binds.length).toBeGreaterThan(0)
    for (const { step, finding } of lightest?.binds ?? []) {
      expect(step).toMatch(/mm$/)
      expect(finding.state).not.toBe('holds')
    }
  })

  test('is the same every time, and tells its progress', () => {
    expect(answer(request).outcome).toEqual(outcome)
    expect(steps).toBeGreaterThan(20)
  })

  test('without prices there is no cheapest; with a price for every part there is', () => {
    expect([outcome.cheapest, lightest?.cost]).toEqual([undefined, undefined])
    const each = { m: 'metre', m2: 'square-metre', piece: 'piece', kg: 'kilogram' } as const
    const bill = request.shapes.flatMap((shape) =>
      billOfMaterials(fitTrade(shape, places, request.setting), few),
    )
    const prices = bill.map(({ materialId, unit }) => ({
      id: materialId,
      each: each[unit],
      amount: 2,
      currency: 'USD',
    }))
    const priced = answer({ ...request, setting: setting({ ...few, prices }) }).outcome
    expect(priced.cheapest?.cost).toBeGreaterThan(0)
    expect(priced.cheapest?.cost).toBeLessThanOrEqual(priced.lightest?.cost ?? 0)
    expect(priced.lightest?.carriedKg).toBeLessThanOrEqual(priced.cheapest?.carriedKg ?? 0)
  })
})

describe('where nothing passes', patience, () => {
  test('the nearest design and what stands in its way are told instead', () => {
    const { outcome } = answer({ shapes: [compact], places: [placeWith(0.6)], setting: setting(few) })
    expect(outcome.lightest).toBeUndefined()
    expect(outcome.nearest?.obstacles.length).toBeGreaterThan(0)
    for (const { finding } of outcome.nearest?.obstacles ?? [])
      expect(finding.what.length).toBeGreaterThan(10)
  })

  test('with a hauler the weight no longer stands in the way', () => {
    const request = { shapes: [compact], places: [placeWith(0.45)], setting: setting(few) }
    const byHand = answer(request).outcome
    const hauled = answer({ ...request, waived: ['lifts'] }).outcome
    expect(hauled.lightest).toBeDefined()
    const dry = hauled.lightest && massProperties(hauled.lightest.pot, few).dryMassKg
    const handDry = byHand.lightest && massProperties(byHand.lightest.pot, few).dryMassKg
    expect(dry).toBeLessThanOrEqual(handDry ?? Infinity)
  })

  test('a limit on weight is kept to', () => {
    const request = { shapes: [compact], places: [placeWith(0.2)], setting: setting(few) }
    expect(answer({ ...request, mostKg: 1 }).outcome.lightest).toBeUndefined()
  })
})

test('a search that is asked to beat what cannot be beaten finds nothing', () => {
  const request = { shapes: [compact], places: [placeWith(0.2)], setting: setting(few) }
  const search = searchGear(compact, request, carriedMass(few), 0)
  let step = search.next()
  while (step.done !== true) step = search.next()
  expect(step.value).toBeUndefined()
})
