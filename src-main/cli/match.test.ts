import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { shippedStations } from '@main/services/stations/shipped'
import { starterPots } from '@shared/design/starter-pots'
import type { Terminal } from './command'
import { match } from './match'
import { runCommandLine } from './run'
import { tide } from './tide'

const water = (id: string, name: string, mps: number) => ({
  format: 'potwright/water',
  version: 1,
  id,
  name,
  region: 'US-WA',
  depthM: 8,
  bottom: 'sand',
  tide: { source: 'station', id: 'noaa/9447130' },
  current: { source: 'rate', springMps: mps, lagH: 0, floodDeg: 10 },
})

// Made anew from the tide database for each test file, which takes a while on a busy machine.
beforeAll(() => shippedStations(), 60_000)

let folder = ''
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'potwright-match-'))
  for (const pot of starterPots) await writeFile(join(folder, `${pot.id}.pot.json`), JSON.stringify(pot))
  const places = [water('creek', 'Mill Creek', 0.15), water('race', 'Gull Race', 2.5)]
  for (const place of places) await writeFile(join(folder, `${place.id}.water.json`), JSON.stringify(place))
})
afterAll(() => rm(folder, { recursive: true }))

async function run(...args: string[]) {
  let out = ''
  let wrong = ''
  const terminal: Terminal = {
    write: (text) => void (out += text),
    writeError: (text) => void (wrong += text),
    readStandardInput: () => Promise.resolve(''),
    env: { HOME: folder, POTWRIGHT_HOME: folder },
    platform: 'linux',
    now: () => new Date('2026-06-01T18:00:00Z'),
  }
  const code = await runCommandLine([match, tide], args, terminal)
  return { code, out, wrong }
}
const pot = (id: string) => join(folder, `starter-${id}.pot.json`)
const at = (id: string) => join(folder, `${id}.water.json`)
const data = () => ['--data', join(folder, 'data')]

test('ranks every pot at every water, with its share of the tide, margin and reason', async () => {
  const args = [pot('compact'), pot('heavy'), '--water', at('creek'), '--water', at('race'), '--days', '15']
  const { code, out } = await run('match', ...args, ...data(), '--json')
  expect(code).toBe(1)
  const reply = JSON.parse(out) as {
    waters: { id: string; cells: { potId: string; bothShare: number; marginMps: number; reason: string }[] }[]
  }
  const [creek, race] = reply.waters
  expect(creek?.cells.length).toBe(2)
  for (const cell of race?.cells ?? []) {
    expect(cell.bothShare).toBeLessThan(0.9)
    expect(cell.marginMps).toBeLessThan(0)
  }
  const heavyInRace = race?.cells.find(({ potId }) => potId === 'starter-heavy')
  const compactInRace = race?.cells.find(({ potId }) => potId === 'starter-compact')
  expect(heavyInRace?.bothShare).toBeGreaterThan(compactInRace?.bothShare ?? 1)
})

test('says in plain text how much of the time a pot holds and shows and how much ring it lacks', async () => {
  const { out } = await run('match', pot('compact'), '--water', at('race'), ...data())
  expect(out).toMatch(/Gull Race\n {2}fails +Compact folding round: holds and shows \d+ % of the time/)
  expect(out).toContain('no ring does')
  const fixture = (name: string) => fileURLToPath(new URL(`../../tests/fixtures/${name}`, import.meta.url))
  const near = await run(
    'match',
    fixture('light-folding.pot.json'),
    '--water',
    fixture('heron-narrows.water.json'),
    ...data(),
  )
  expect(near.out).toMatch(/, [\d.]+ kg more in the base ring,/)
})

test.each([
  [['match'], 'at least one pot'],
  [['match', 'x.pot.json'], 'at least one --water'],
  [['match', 'nowhere.pot.json', '--water', 'y'], 'could not be read'],
])('%j is refused', async (args, says) => {
  const { code, out, wrong } = await run(...args)
  expect([code, out]).toEqual([2, ''])
  expect(wrong).toContain(says)
})

test('a tide with a pot names the windows to set and to haul, and the course up to the float', async () => {
  const { code, out } = await run('tide', at('creek'), '--pot', pot('heavy'), '--days', '3')
  expect(code).toBe(0)
  expect(out).toMatch(/Set: {2}2026-06-01 \d\d:\d\d to \d\d:\d\d, slack \d\d:\d\d, up to/)
  expect(out).toMatch(/Haul: 2026-06-0\d/)
  expect(out).toMatch(/come up to the float on (010|190)°/)
})

test('a pot that never works there has no window, and the exit code says so', async () => {
  const { code, out } = await run('tide', at('race'), '--pot', pot('compact'), '--soak', '500', '--days', '2')
  expect(code).toBe(1)
  expect(out).toContain('Haul: no window')
})
