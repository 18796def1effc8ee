import { stations as databaseStations, stationsById } from '@neaps/tide-database'
import { describe, expect, test } from 'vitest'
import { heightSignal } from '@shared/tides/height'
import { streamSignal } from '@shared/tides/stream'
import { distanceKm } from './distance'
import { StationLibrary } from './library'
import { packStations } from './pack'

const packed = packStations('test')
const library = new StationLibrary(packed.index, packed.constants)

describe('what is shipped', () => {
  test('no station whose licence forbids commercial use, nor one that leans on such a station', () => {
    const barred = databaseStations.filter(({ license }) => !license.commercial_use)
    expect(barred.length).toBeGreaterThan(200)
    for (const { id } of barred) {
      expect(library.get(id)).toBeUndefined()
      expect(packed.constants.tides[id]).toBeUndefined()
    }
    for (const [id] of packed.index.stations) expect(stationsById.get(id)?.license.commercial_use).toBe(true)
  })

  test('every station says whose it is and under which licence', () => {
    for (const [id] of packed.index.stations) {
      const station = library.get(id)
      expect(station?.attribution.length, id).toBeGreaterThan(10)
      expect(station?.licence.length, id).toBeGreaterThan(1)
    }
  })

  test('every station can be predicted', () => {
    const at = Date.UTC(2026, 0, 1)
    for (const [id, kind] of packed.index.stations) {
      const tide = kind === 't' ? library.tideConstants(id) : undefined
      const current = kind === 'c' ? library.currentConstants(id) : undefined
      if (tide && !tide.offsets) expect(Number.isFinite(heightSignal(tide, at, at).at(at)), id).toBe(true)
      else if (current && !current.offsets)
        expect(Number.isFinite(streamSignal(current, at, at).at(at)), id).toBe(true)
      else expect(tide?.offsets ?? current?.offsets, id).toBeDefined()
    }
    expect(library.count).toBeGreaterThan(8000)
  })

  test('constants are the database’s own', () => {
    const theirs = stationsById.get('noaa/9447130')
    const ours = library.tideConstants('noaa/9447130')
    const m2 = theirs?.harmonic_constituents.find(({ name }) => name === 'M2')
    expect(ours?.constituents.find(([name]) => name === 'M2')?.[1]).toBeCloseTo(m2?.amplitude ?? NaN, 4)
    expect(ours?.meanLevelM).toBeCloseTo((theirs?.datums['MSL'] ?? 0) - (theirs?.datums['MLLW'] ?? 0), 4)
  })
})

describe('looking up', () => {
  test('by name, whatever the accents and the case', () => {
    expect(library.search('FRIDAY harb', 'tide', 5)[0]?.name).toBe('Friday Harbor')
    expect(library.search('deception pass', 'current', 5).some(({ id }) => id === 'noaa/PUG1701')).toBe(true)
    expect(library.search('9447130', undefined, 5)[0]?.name).toBe('Seattle')
    expect(library.search('', undefined, 5)).toEqual([])
    expect(library.search('no such place anywhere', undefined, 5)).toEqual([])
  })

  test('by position, nearest first, with the distance', () => {
    const near = library.near(48.545, -123.012, 'tide', 3)
    expect(near[0]?.station.id).toBe('noaa/9449880')
    expect(near[0]?.distanceKm).toBeLessThan(1)
    expect(near.map(({ distanceKm }) => distanceKm)).toEqual(
      [...near.map(({ distanceKm }) => distanceKm)].sort((a, b) => a - b),
    )
  })

  test('by the bounds of a map, over the date line too, never more than asked for', () => {
    const all = { west: -180, south: -90, east: 180, north: 90 }
    const { stations, total } = library.within(all, undefined, 300)
    expect(stations.length).toBeLessThanOrEqual(300)
    expect(stations.length).toBeGreaterThan(290)
    expect(total).toBe(library.count)
    const pacific = library.within({ west: 170, south: -60, east: -170, north: 60 }, 'tide', 1000)
    expect(pacific.total).toBeGreaterThan(10)
    for (const { longitudeDeg } of pacific.stations)
      expect(Math.abs(longitudeDeg)).toBeGreaterThanOrEqual(170)
  })

  test('distances are those of the sphere', () => {
    expect(distanceKm(0, 0, 0, 90)).toBeCloseTo((Math.PI / 2) * 6371.0088, 6)
    expect(distanceKm(10, 20, 10, 20)).toBe(0)
    expect(distanceKm(0, 179.5, 0, -179.5)).toBeCloseTo(111.195, 2)
  })
})
