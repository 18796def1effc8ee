import { posix, win32 } from 'node:path'
import { expect, test } from 'vitest'
import { isInside } from './inside'

test.each([
  ['/data', '/data', true],
  ['/data', '/data/pots', true],
  ['/data', '/data/..pots', true],
  ['/data/', '/data/pots/../pots', true],
  ['/data', '/', false],
  ['/data', '/data-old', false],
  ['/data', '/data/../etc', false],
])('in %s, %s: %s', (folder, path, expected) => {
  expect(isInside(folder, path, posix)).toBe(expected)
})

test.each([
  ['C:\\Crab', 'C:\\Crab\\pots', true],
  ['C:\\Crab', 'c:\\crab\\pots', true],
  ['C:\\Crab', 'D:\\Crab', false],
  ['C:\\Crab', '\\\\club\\share\\Crab', false],
  ['C:\\Crab', 'C:\\Crabs', false],
])('on Windows in %s, %s: %s', (folder, path, expected) => {
  expect(isInside(folder, path, win32)).toBe(expected)
})
