import { plainLocale } from '@shared/units/locale'
import { beforeAll, expect, test } from 'vitest'
import { shippedStations } from '@main/services/stations/shipped'
import type { Terminal } from './command'
import { runCommandLine } from './run'
import { tide } from './tide'
import { windowsText } from './tide-text'

const narrows = {
  format: 'potwright/water',
  version: 1,
  id: 'narrows',
  name: 'Heron Narrows',
  depthM: 12,
  tide: { source: 'station', id: 'noaa/9447130' },
  current: { source: 'station', id: 'noaa/PUG1701' },
}

// Made anew from the tide database for each test file, which takes a while on a busy machine.
beforeAll(() => shippedStations(), 60_000)

async function run(water: unknown, ...args: string[]) {
  let out = ''
  let wrong = ''
  const terminal: Terminal = {
    write: (text) => void (out += text),
    writeError: (text) => void (wrong += text),
    readStandardInput: () => Promise.resolve(JSON.stringify(water)),
    env: {},
    platform: 'linux',
    now: () => new Date('2026-06-01T18:00:00Z'),
  }
  const code = await runCommandLine([tide], ['tide', '-', ...args], terminal)
  return { code, out, wrong }
}

test('prints slacks, strongest streams, high and low water by the clock of the place', async () => {
  const { code, out } = await run(narrows, '--from', '2026-06-01', '--days', '1', '--units', 'imperial')
  expect(code).toBe(0)
  // NOAA prints slack at 11:15 and the ebb at 14:08 UTC; both are seven hours earlier by Pacific summer time.
  expect(out).toMatch(/04:1\d PDT {2}slack, ebb begins/)
  expect(out).toMatch(/07:0\d PDT {2}strongest ebb {2}7\.\d+ kn/)
  expect(out).toContain('high water')
  expect(out).toContain('sunrise')
})

test('JSON carries the series in UTC and says whose stations they are', async () => {
  const { code, out } = await run(narrows, '--json')
  const reply = JSON.parse(out) as {
    series: { time: string }[]
    stations: { id: string; attribution: string; licence: string }[]
  }
  expect(code).toBe(0)
  expect(reply.series.length).toBe(2 * 144)
  expect(reply.series[0]?.time).toBe('2026-06-01T07:00:00.000Z')
  expect(reply.stations.map(({ id, licence }) => [id, licence])).toEqual([
    ['noaa/9447130', 'public domain'],
    ['noaa/PUG1701', 'public domain'],
  ])
})

test('what is missing is said, with exit code 1', async () => {
  const { code, out } = await run({ ...narrows, current: undefined })
  expect(code).toBe(1)
  expect(out).toContain('Cannot tell: the current at this water is not known.')
})

test.each([
  ['an unknown station', { ...narrows, tide: { source: 'station', id: 'noaa/NOPE' } }, [], 'noaa/NOPE'],
  ['a day that is none', narrows, ['--from', '2026-02-30'], '2026-02-30'],
  ['a date outside the predictions', narrows, ['--from', '2200-01-01'], '1900 to 2100'],
  ['too many days', narrows, ['--days', '31'], 'from 1 to 30'],
  ['unknown units', narrows, ['--units', 'nautical'], 'metric or imperial'],
  ['a field of the wrong kind', { ...narrows, depthM: 'deep' }, [], 'depthM'],
])('%s is refused with exit code 2 and nothing is written', async (_, water, args, says) => {
  const { code, out, wrong } = await run(water, ...args)
  expect([code, out]).toEqual([2, ''])
  expect(wrong).toContain(says)
})

test('a course of due north is a course like any other', () => {
  const window = {
    fromMs: 0,
    toMs: 3_600_000,
    slackMs: undefined,
    inDaylight: true,
    strongestMps: 0.2,
    courseAtStartDeg: 0,
    courseAtEndDeg: 0,
  }
  const windows = { holds: [], shows: [], both: [], set: window, haul: undefined, holdsThroughout: true }
  expect(windowsText('Heavy one', windows, 'UTC', plainLocale)).toContain('come up to the float on 000°')
})
