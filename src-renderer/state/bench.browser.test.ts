import { starterPots } from '@shared/design/starter-pots'
import type { Pot } from '@shared/schema/pot'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { BenchState } from './bench.svelte'
import { memoryBridge } from './memory-bridge'
import { settings } from './settings.svelte'
import { shelf, waters } from './shelf'

beforeEach(async () => {
  window.bridge = memoryBridge()
  await Promise.all([settings.load(), shelf.load(), waters.load()])
})
afterEach(() => vi.useRealTimers())

const nextFrame = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))

test('a change saves itself and is found again by the next start', async () => {
  const bench = new BenchState('2026-12-05')
  bench.changePot({ name: 'Heavy one' }, 'name')
  bench.changeTrip({ people: 3 }, 'trip.people')
  bench.changeWater({ currentMps: 1.1 }, 'water.currentMps')
  await bench.autosave.flush()
  expect(bench.autosave.state).toBe('clean')

  await Promise.all([settings.load(), shelf.load()])
  const again = new BenchState('2026-12-06')
  again.resume()
  expect(again.pot.name).toBe('Heavy one')
  expect(again.trip.people).toBe(3)
  expect(again.trip.date).toBe('2026-12-06')
  expect(again.setup.typed.currentMps).toBe(1.1)
})

test('undo covers the strip as well as the pot', () => {
  const bench = new BenchState('2026-12-05')
  const before = bench.sheet
  bench.changeTrip({ region: 'US-WA' }, 'trip.region')
  bench.changePot({ catchKg: 9 }, 'catchKg')
  bench.undo()
  expect(bench.pot.catchKg).toBe(before.pot.catchKg)
  expect(bench.trip.region).toBe('US-WA')
  bench.undo()
  expect(bench.sheet).toEqual(before)
})

test('a change that is not a pot is refused, and the design stays as it was', () => {
  const bench = new BenchState('2026-12-05')
  const before = bench.pot
  bench.changePot({ catchKg: Number.NaN }, 'catchKg')
  expect(bench.pot).toBe(before)
  expect(bench.history.canUndo).toBe(false)
})

test('the check follows a change within a frame', async () => {
  const bench = new BenchState('2026-12-05')
  const before = bench.check
  bench.changePot({ bait: undefined }, 'bait')
  expect(bench.check).toBe(before)
  await nextFrame()
  expect(bench.check).not.toBe(before)
})

test('a design changed elsewhere meanwhile is kept beside this one', async () => {
  const bench = new BenchState('2026-12-05')
  bench.changePot({ name: 'Mine' }, 'name')
  await bench.autosave.flush()
  const elsewhere = { ...bench.pot, name: 'Theirs' }
  await window.bridge?.('pots:save', { document: elsewhere, revision: shelf.find(bench.pot.id)?.revision })
  bench.changePot({ name: 'Mine again' }, 'name')
  await bench.autosave.flush()
  expect(shelf.items.map(({ document }) => document.name).sort()).toEqual([
    'Mine again (from this bench)',
    'Theirs',
  ])
  expect(bench.pot.name).toBe('Mine again (from this bench)')
})

/** Another window or machine saves a design over the revision it found. */
async function savedElsewhere(pot: Pot): Promise<void> {
  await window.bridge?.('pots:save', { document: pot, revision: shelf.find(pot.id)?.revision })
}

test('a design changed elsewhere is kept beside this one though the shelf was read again', async () => {
  const bench = new BenchState('2026-12-05')
  bench.changePot({ name: 'Mine' }, 'name')
  await bench.autosave.flush()
  bench.changePot({ catchKg: 9 }, 'catchKg')
  await savedElsewhere({ ...bench.pot, name: 'Theirs', catchKg: 4 })
  await shelf.load()
  bench.catchUp()
  await bench.autosave.flush()
  const kept = shelf.items.map(({ document: { name, catchKg } }) => [name, catchKg])
  expect(kept).toContainEqual(['Theirs', 4])
  expect(kept).toContainEqual(['Mine (from this bench)', 9])
  expect(bench.pot.name).toBe('Mine (from this bench)')
})

test('a design changed elsewhere and not here lies on the bench as it is now', async () => {
  const bench = new BenchState('2026-12-05')
  bench.changePot({ name: 'Mine' }, 'name')
  await bench.autosave.flush()
  await savedElsewhere({ ...bench.pot, name: 'Theirs' })
  await shelf.load()
  bench.catchUp()
  expect(bench.pot.name).toBe('Theirs')

  bench.changePot({ catchKg: 7 }, 'catchKg')
  await bench.autosave.flush()
  expect(shelf.items.map(({ document: { name, catchKg } }) => [name, catchKg])).toEqual([['Theirs', 7]])
})

test('what the disk refused comes back by undo after another design was opened', async () => {
  const bench = new BenchState('2026-12-05')
  bench.changePot({ name: 'First' }, 'name')
  await bench.autosave.flush()
  const second = { ...bench.pot, id: 'second', name: 'Second' }
  await shelf.save(second)

  const disk = window.bridge
  window.bridge = () =>
    Promise.resolve({ ok: false, error: { code: 'storage', message: 'The disk is full.' } })
  bench.changePot({ catchKg: 9 }, 'catchKg')
  await bench.open(second)
  expect(bench.pot.name).toBe('Second')

  if (disk) window.bridge = disk
  bench.undo()
  await bench.autosave.flush()
  expect(shelf.items.map(({ document: { name, catchKg } }) => [name, catchKg === 9])).toEqual([
    ['Second', false],
    ['First', true],
  ])
})

test('every starting shape can be put on the bench and saved', async () => {
  const bench = new BenchState('2026-12-05')
  for (const pot of starterPots) {
    await bench.open({ ...pot, id: `own-${pot.id}` })
    bench.changePot({ notes: 'tried' }, 'notes')
    await bench.autosave.flush()
    expect(shelf.find(`own-${pot.id}`)?.document.notes).toBe('tried')
  }
})
