import { starterPots } from '@shared/design/starter-pots'
import type { Pot } from '@shared/schema/pot'
import type { Trip } from '@shared/schema/trip'
import { expect, test } from 'vitest'
import { labelDemands } from './label-demands'
import { parsePack } from './pack'
import { packFiles } from './packs'

const pack = (region: string) => {
  const read = parsePack(packFiles.get(region))
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}
const [, standard] = starterPots
if (!standard) throw new Error('no starting shape')
const trip = (more: Partial<Trip>): Trip => ({
  format: 'potwright/trip',
  version: 1,
  date: '2026-12-05',
  attended: false,
  tiedOff: false,
  ...more,
})

// The fields, letter heights and codes are those of the packs, each read at its source.

test('Washington asks for one person’s two names and address on the float, and for no letter height', () => {
  const asked = labelDemands(pack('US-WA'), { pot: standard, trip: trip({ region: 'US-WA' }) })
  expect(asked.labels.float.fields).toEqual(['first-name', 'last-name', 'address'])
  expect(asked.labels.tag.fields).toEqual([])
  expect(asked.letterHeightMm).toBeUndefined()
  expect(asked.rules.map((rule) => rule.id)).toContain('US-WA:buoy-mark')
})

test('Queensland asks for a tag on the pot; tied to a tree, the name moves from the float to the rope', () => {
  const adrift = labelDemands(pack('AU-QLD'), { pot: standard, trip: trip({ region: 'AU-QLD' }) })
  expect(adrift.labels.tag.fields).toEqual(['last-name', 'address'])
  expect(adrift.labels.float.fields).toEqual(['last-name'])
  expect(adrift.labels.ropeTag.fields).toEqual([])
  const tied = labelDemands(pack('AU-QLD'), {
    pot: standard,
    trip: trip({ region: 'AU-QLD', tiedOff: true }),
  })
  expect(tied.labels.float.fields).toEqual([])
  expect(tied.labels.ropeTag.fields).toEqual(['last-name'])
})

test('New South Wales gives the height of the letters and a code by the kind of gear', () => {
  const trap: Pot = { ...standard, gearKind: 'collapsible-trap' }
  const asked = labelDemands(pack('AU-NSW'), { pot: trap, trip: trip({ region: 'AU-NSW' }) })
  expect(asked.letterHeightMm).toBe(15)
  expect(asked.contrasting).toBe(true)
  expect(asked.labels.float.texts).toContain('CT')
  expect(asked.labels.float.fields).toEqual(['last-name', 'initial', 'birth-year', 'postcode'])
})

test('British Columbia leaves a choice: the way the design already meets is the one printed', () => {
  const initials: Pot = { ...standard, marks: { float: { text: [], fields: ['last-name', 'initials'] } } }
  const legal = { trip: trip({ region: 'CA-BC' }) }
  expect(labelDemands(pack('CA-BC'), { ...legal, pot: initials }).labels.float.fields).toEqual([
    'last-name',
    'initials',
  ])
  const first = labelDemands(pack('CA-BC'), { ...legal, pot: standard })
  expect(first.labels.float.fields).toEqual(['first-name', 'last-name'])
  expect(first.letterHeightMm).toBe(75)
})
