import { expect, test } from 'vitest'
import { notices } from '@renderer/ui/notices.svelte'
import { Autosave, unsaved } from './autosave.svelte'

/** A disk that answers when it is told to. */
function slowDisk() {
  const asked: ((saved: boolean) => void)[] = []
  const save = () => new Promise<boolean>((answer) => asked.push(answer))
  return { asked, save }
}

const microtasks = () => new Promise((done) => setTimeout(done))

test('what changes while a save is under way is saved after it', async () => {
  const disk = slowDisk()
  const autosave = new Autosave(disk.save)
  autosave.touch()
  const first = autosave.flush()
  await microtasks()
  autosave.touch()
  disk.asked[0]?.(true)
  await first
  expect(autosave.state).toBe('waiting')

  const second = autosave.flush()
  await microtasks()
  expect(disk.asked).toHaveLength(2)
  disk.asked[1]?.(true)
  await second
  expect(autosave.state).toBe('clean')
})

test('a save that fails is said once, tried again at the next chance, and said no more once it worked', async () => {
  const disk = slowDisk()
  const autosave = new Autosave(disk.save)
  autosave.touch()
  const first = autosave.flush()
  await microtasks()
  for (let twice = 0; twice < 2; twice++) notices.say('The disk is full.', { tone: 'fails', topic: unsaved })
  disk.asked[0]?.(false)
  await first
  expect(autosave.state).toBe('failed')
  expect(notices.list.map(({ text }) => text)).toEqual(['The disk is full.'])

  const second = autosave.flush()
  await microtasks()
  disk.asked[1]?.(true)
  await second
  expect(autosave.state).toBe('clean')
  expect(notices.list).toEqual([])
})

test('with nothing changed the disk is left alone', async () => {
  const disk = slowDisk()
  await new Autosave(disk.save).flush()
  expect(disk.asked).toHaveLength(0)
})
