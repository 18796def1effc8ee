import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { backupsToKeep, dayOf } from './backup-policy'

const now = new Date('2026-12-05T18:00:00Z')
const at = (text: string) => new Date(text)

describe('which backups stay', () => {
  test('three of today and the newest of each earlier day', () => {
    const moments = [
      '2026-12-05T17:00:00Z',
      '2026-12-05T12:00:00Z',
      '2026-12-05T09:00:00Z',
      '2026-12-05T08:00:00Z',
      '2026-12-04T22:00:00Z',
      '2026-12-04T07:00:00Z',
      '2026-11-01T07:00:00Z',
    ].map(at)
    expect(backupsToKeep(moments, now).map((kept) => moments.indexOf(kept))).toEqual([0, 1, 2, 4, 6])
  })

  test('ten in all, the newest', () => {
    const days = Array.from({ length: 30 }, (_, index) => new Date(now.getTime() - index * 86_400_000))
    expect(backupsToKeep(days, now)).toEqual(days.slice(0, 10))
  })

  test('one from a clock that was ahead counts as today’s', () => {
    const ahead = at('2027-03-01T00:00:00Z')
    expect(backupsToKeep([ahead, at('2026-12-05T10:00:00Z')], now)).toContain(ahead)
  })

  test('the newest always stays, never more than ten, and no earlier day twice', () => {
    const moment = fc.date({
      min: at('2026-10-01T00:00:00Z'),
      max: at('2026-12-31T00:00:00Z'),
      noInvalidDate: true,
    })
    fc.assert(
      fc.property(fc.array(moment, { minLength: 1, maxLength: 40 }), (moments) => {
        const kept = backupsToKeep(moments, now)
        expect(kept.length).toBeLessThanOrEqual(10)
        expect(kept[0]?.getTime()).toBe(Math.max(...moments.map((one) => one.getTime())))
        const earlier = kept.map(dayOf).filter((day) => day < dayOf(now))
        expect(new Set(earlier).size).toBe(earlier.length)
      }),
    )
  })
})
