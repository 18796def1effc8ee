import type { Water } from '@shared/schema/water'
import { beforeEach, expect, test } from 'vitest'
import { memoryBridge } from './memory-bridge'
import { route } from './route.svelte'
import { settings } from './settings.svelte'
import { waters } from './shelf'
import { WaterDesk } from './water-desk.svelte'

const creek: Water = {
  format: 'potwright/water',
  version: 1,
  id: 'creek',
  name: 'Otter Creek',
  depthM: 4,
  current: { source: 'fixed', mps: 0.3 },
}

beforeEach(async () => {
  window.bridge = memoryBridge()
  await Promise.all([settings.load(), waters.load()])
  await waters.save(creek)
  await waters.save({ ...creek, id: 'roads', name: 'Outer roadstead' })
})

const kept = (id: string) => waters.find(id)?.document

test('a change is kept, and can be taken back', async () => {
  const desk = new WaterDesk()
  await desk.choose('creek')
  desk.change({ depthM: 6 }, 'depth')
  expect(desk.water?.depthM).toBe(6)
  await desk.autosave.flush()
  expect(kept('creek')?.depthM).toBe(6)
  desk.undo()
  await desk.autosave.flush()
  expect(desk.water?.depthM).toBe(4)
  expect(kept('creek')?.depthM).toBe(4)
  expect(desk.canRedo).toBe(true)
})

test('a field taken away is left out of what is kept', async () => {
  const desk = new WaterDesk()
  await desk.choose('creek')
  desk.change({ current: undefined } as Partial<Water>, 'current')
  await desk.autosave.flush()
  expect(Object.keys(kept('creek') ?? {})).not.toContain('current')
})

test('what is not a water is refused, and nothing changes', async () => {
  const desk = new WaterDesk()
  await desk.choose('creek')
  desk.change({ depthM: -3 }, 'depth')
  expect(desk.water).toEqual(creek)
  expect(desk.canUndo).toBe(false)
})

test('going to another water saves the one that was open, and each has its own way back', async () => {
  const desk = new WaterDesk()
  await desk.choose('creek')
  desk.change({ name: 'Otter Creek mouth' }, 'name')
  await desk.choose('roads')
  expect(kept('creek')?.name).toBe('Otter Creek mouth')
  expect(desk.water?.name).toBe('Outer roadstead')
  expect(desk.canUndo).toBe(false)
})

test('a water changed elsewhere meanwhile is kept beside this one', async () => {
  const desk = new WaterDesk()
  await desk.choose('creek')
  desk.change({ depthM: 5 }, 'depth')
  await window.bridge?.('waters:save', {
    document: { ...creek, depthM: 9 },
    ...(waters.find('creek') && { revision: waters.find('creek')?.revision }),
  } as never)
  await desk.autosave.flush()
  expect(kept('creek')?.depthM).toBe(9)
  expect(desk.water).toMatchObject({ name: 'Otter Creek (from this bench)', depthM: 5 })
})

test('a save that is answered late leaves the water that lies open by then alone', async () => {
  const desk = new WaterDesk()
  await desk.choose('creek')
  desk.change({ depthM: 5 }, 'depth')
  const saving = desk.autosave.flush()
  await Promise.resolve() // the save is under way
  route.go('waters', 'roads')
  desk.change({ depthM: 12 }, 'depth')
  await saving
  expect(desk.water).toMatchObject({ name: 'Outer roadstead', depthM: 12 })
  await desk.autosave.flush()
  expect([kept('creek')?.depthM, kept('roads')?.depthM]).toEqual([5, 12])
})
