import * as v from 'valibot'
import { beforeAll, describe, expect, test } from 'vitest'
import { stations as calls } from '@shared/contract/stations'
import { stationHandlers } from './handlers'
import { shippedStations } from './shipped'

const handlers = stationHandlers()

// Made anew from the tide database for each test file, which takes a while on a busy machine.
beforeAll(() => shippedStations(), 60_000)

describe('stations over the contract', () => {
  test('replies fit the contract, constants and licence included', async () => {
    const found = await handlers['stations:search']({ text: 'seattle', limit: 5 })
    const near = await handlers['stations:near']({ latitudeDeg: -33.86, longitudeDeg: 151.2, limit: 3 })
    const bounds = { west: 144, south: -39, east: 146, north: -37 }
    const within = await handlers['stations:within']({ ...bounds, kind: 'tide', limit: 50 })
    const constants = await handlers['stations:constants']({ tide: 'noaa/9447130', current: 'noaa/PUG1701' })
    for (const [reply, { reply: schema }] of [
      [found, calls['stations:search']],
      [near, calls['stations:near']],
      [within, calls['stations:within']],
      [constants, calls['stations:constants']],
    ] as const) {
      expect(reply.ok).toBe(true)
      if (reply.ok) expect(v.parse(schema as v.GenericSchema, reply.value)).toEqual(reply.value)
    }
  })

  test('a place far from any station is told how far the nearest is', async () => {
    const far = await handlers['stations:near']({
      latitudeDeg: 47,
      longitudeDeg: 87,
      kind: 'tide',
      limit: 1,
    })
    expect(far.ok && far.value.note).toMatch(/nearest tide station, .+, is \d{3,4} km away/)
    const close = await handlers['stations:near']({ latitudeDeg: 48.54, longitudeDeg: -123.01, limit: 1 })
    expect(close.ok && close.value.note).toBeUndefined()
  })

  test('a station that is not there is an error that names it and its field', async () => {
    const unknown = await handlers['stations:constants']({ current: 'noaa/NOPE01' })
    expect(unknown).toMatchObject({ ok: false, error: { code: 'not_found', path: 'current.id' } })
    expect(!unknown.ok && unknown.error.message).toContain('noaa/NOPE01')
  })
})
