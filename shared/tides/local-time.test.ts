import { describe, expect, test } from 'vitest'
import type { Water } from '@shared/schema/water'
import { fridayHarbor } from '../../tests/fixtures/station-constants'
import { daylight } from './daylight'
import { clockAt, dayAt, localDays } from './local-time'
import { positionOf, waterZone } from './place'
import { hourMs } from './signal'

const water: Water = { format: 'potwright/water', version: 1, id: 'w', name: 'W', depthM: 5 }
const hours = (zone: string, day: string, days = 1) => {
  const span = localDays(zone, day, days)
  return span.ok ? (span.value.toMs - span.value.fromMs) / hourMs : span.error.code
}

describe('days by the clock of the place', () => {
  test.each([
    ['America/Los_Angeles', '2026-03-08', 23],
    ['America/Los_Angeles', '2026-11-01', 25],
    ['America/Los_Angeles', '2026-07-01', 24],
    ['Europe/London', '2026-03-29', 23],
    ['Australia/Sydney', '2026-04-05', 25],
    ['Australia/Sydney', '2026-10-04', 23],
    ['Australia/Lord_Howe', '2026-10-04', 23.5],
    ['Australia/Brisbane', '2026-10-04', 24],
  ])('%s %s is %d hours long', (zone, day, long) => {
    expect(hours(zone, day)).toBe(long)
  })

  test('a week over the change to summer time is an hour short', () => {
    expect(hours('America/Los_Angeles', '2026-03-05', 7)).toBe(7 * 24 - 1)
  })

  test('the hour that the clock shows is summer time in summer', () => {
    expect(clockAt('America/Los_Angeles', Date.UTC(2026, 6, 15, 19, 2), { withZone: true })).toBe('12:02 PDT')
    expect(clockAt('America/Los_Angeles', Date.UTC(2026, 0, 15, 20, 2), { withZone: true })).toBe('12:02 PST')
    expect(clockAt('America/Los_Angeles', Date.UTC(2026, 0, 15, 20, 2), { hours: 12 })).toBe('12:02 PM')
    expect(clockAt('America/Los_Angeles', Date.UTC(2026, 0, 15, 8, 2), { hours: 12 })).toBe('12:02 AM')
    expect(clockAt('America/Los_Angeles', Date.UTC(2026, 0, 15, 17, 2), { hours: 12, withZone: true })).toBe(
      '9:02 AM PST',
    )
    expect(dayAt('America/Los_Angeles', Date.UTC(2026, 0, 15, 3))).toBe('2026-01-14')
  })

  test.each([
    ['1899-12-31', 'outside'],
    ['2100-12-30', 'outside'],
    ['2026-02-30', 'no day'],
  ])('%s is refused, and says why', (day, why) => {
    const span = localDays('UTC', day, 10)
    expect(span.ok).toBe(false)
    if (!span.ok) expect(span.error.message).toContain(why)
  })
})

describe('zone of a water', () => {
  test('its own, then its station’s, then its position’s, else UTC', () => {
    const station = { tide: fridayHarbor }
    expect(waterZone({ ...water, timeZone: 'Asia/Tokyo' }, station)).toBe('Asia/Tokyo')
    expect(waterZone({ ...water, latitudeDeg: 0, longitudeDeg: 0 }, station)).toBe('America/Los_Angeles')
    expect(waterZone({ ...water, latitudeDeg: -33.85, longitudeDeg: 151.2 }, {})).toBe('Australia/Sydney')
    expect(waterZone(water, {})).toBe('UTC')
  })

  test('its position is its own before its station’s', () => {
    expect(positionOf({ ...water, latitudeDeg: 1, longitudeDeg: 2 }, { tide: fridayHarbor })).toEqual({
      latitudeDeg: 1,
      longitudeDeg: 2,
    })
    expect(positionOf(water, { tide: fridayHarbor })).toMatchObject({ latitudeDeg: 48.5453 })
    expect(positionOf(water, {})).toBeUndefined()
  })
})

describe('daylight', () => {
  const light = (zone: string, day: string, lat: number, lon: number) => {
    const span = localDays(zone, day, 1)
    if (!span.ok) throw new Error(span.error.message)
    return daylight(span.value, zone, { latitudeDeg: lat, longitudeDeg: lon })
  }

  test('about twelve hours at the equinox, and inside the day asked for', () => {
    const [sun] = light('America/Los_Angeles', '2026-03-20', 48.5, -123)
    expect(((sun?.toMs ?? 0) - (sun?.fromMs ?? 0)) / hourMs).toBeCloseTo(12.15, 1)
    expect(dayAt('America/Los_Angeles', sun?.fromMs ?? 0)).toBe('2026-03-20')
  })

  // Greenwich, 21 June: sunrise 03:43, sunset 20:22 UTC (U.S. Naval Observatory tables, latitude 51.5 N).
  test('midsummer at Greenwich', () => {
    const [sun] = light('Europe/London', '2026-06-21', 51.48, 0)
    expect(Math.abs((sun?.fromMs ?? 0) - Date.UTC(2026, 5, 21, 3, 43))).toBeLessThan(2 * 60_000)
    expect(Math.abs((sun?.toMs ?? 0) - Date.UTC(2026, 5, 21, 20, 22))).toBeLessThan(2 * 60_000)
  })

  test('a polar day is light from end to end, a polar night not at all', () => {
    const [day] = light('Europe/Oslo', '2026-06-21', 70, 25)
    expect(((day?.toMs ?? 0) - (day?.fromMs ?? 0)) / hourMs).toBe(24)
    expect(light('Europe/Oslo', '2026-12-21', 70, 25)).toEqual([])
  })
})
