import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { defaultCoefficients } from '@shared/physics/coefficients'
import { readPacks } from '@shared/rules/packs'
import type { Finding } from '@shared/schema/check'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Trip } from '@shared/schema/trip'
import { plainLocale } from '@shared/units/locale'
import { fullCheck } from '@shared/verdicts/full-check'
import { expect, test } from 'vitest'
import { nextStep } from './next-step'

function unknown(pack: RulePack | undefined, trip: Trip): Finding[] {
  return starterPots.flatMap((pot) =>
    Object.values(
      fullCheck({
        pot,
        trip,
        pack,
        water: undefined,
        materials: builtInMaterials,
        coefficients: defaultCoefficients,
        locale: plainLocale,
        today: '2026-11-25',
      }).verdicts,
    ).flatMap(({ findings }) => findings.filter(({ state }) => state === 'cannot-tell')),
  )
}

const bare = (region?: string): Trip => ({
  format: 'potwright/trip',
  version: 1,
  ...(region === undefined ? {} : { region }),
})
const label = (missing: string, region?: string) =>
  nextStep({ rule: 'any', part: 'trip', missing }, region)?.label

test('what a new pot misses is asked for by name', () => {
  const labels = unknown(undefined, bare()).map((finding) => nextStep(finding, undefined)?.label)
  expect([...new Set(labels)].sort()).toEqual([
    'Choose the region',
    'Give the depth',
    'Give the soak',
    'Give the space',
  ])
})

test('whatever a region asks of the trip or the water leads to a field', () => {
  for (const [region, pack] of readPacks())
    for (const finding of unknown(pack, bare(region))) {
      const ofTrip = finding.part === 'trip' || finding.part === 'water'
      const open = /which of the sources|meets it this way|^the rules on|sunrise|width of the waterway/
      if (!ofTrip || open.test(finding.missing ?? '')) continue
      expect(nextStep(finding, region), `${region} ${finding.rule}: ${String(finding.missing)}`).toBeDefined()
    }
})

test('the first thing missing comes first, and crabs wait for a region', () => {
  expect(label('whether someone stays with the gear and the zone', 'US-WA')).toBe('Say who stays')
  expect(label('which species is fished for')).toBe('Choose the region')
  expect(label('which species is fished for', 'US-WA')).toBe('Choose the crab')
})

test('what a part misses leads to its compartment', () => {
  expect(nextStep({ rule: 'any', part: 'marks', missing: 'the marking' }, 'US-WA')).toEqual({
    label: 'Show the marks',
    to: { part: 'marks' },
  })
})
