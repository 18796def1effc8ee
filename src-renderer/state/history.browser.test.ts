import { expect, test } from 'vitest'
import { History } from './history.svelte'

const clock = () => {
  let at = 0
  return { now: () => at, wait: (ms: number) => (at += ms) }
}

test('goes back and forth over what was changed', () => {
  const { now, wait } = clock()
  const history = new History('a', now)
  history.push('b', 'rope')
  wait(2000)
  history.push('c', 'rope')
  history.undo()
  expect(history.current).toBe('b')
  history.undo()
  expect(history.current).toBe('a')
  expect(history.canUndo).toBe(false)
  history.redo()
  history.redo()
  expect(history.current).toBe('c')
  expect(history.canRedo).toBe(false)
})

test('a drag is one step back, and a change of something else is another', () => {
  const { now, wait } = clock()
  const history = new History(0, now)
  for (let n = 1; n <= 20; n++) {
    history.push(n, 'frame.0.barDiameterMm')
    wait(50)
  }
  history.push(99, 'rope.lengthM')
  history.undo()
  expect(history.current).toBe(20)
  history.undo()
  expect(history.current).toBe(0)
})

test('a new change forgets what was undone', () => {
  const history = new History('a', () => 0)
  history.push('b', 'x')
  history.undo()
  history.push('c', 'y')
  expect(history.canRedo).toBe(false)
  history.undo()
  expect(history.current).toBe('a')
})

test('a change after an undo is a step of its own, though the same thing is changed again at once', () => {
  const history = new History('a', () => 0)
  history.push('b', 'x')
  history.undo()
  history.push('c', 'x')
  history.undo()
  expect(history.current).toBe('a')
})
