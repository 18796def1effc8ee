import { mkdir, readFile, readdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { chosenFolder, chooseFolder } from './data-place'
import { temporaryFolder } from './temporary-folder'

const folder = temporaryFolder()

async function places() {
  const [home, from, to] = ['home', 'old', 'new'].map((name) => join(folder(), name)) as [
    string,
    string,
    string,
  ]
  await mkdir(join(from, 'pots'), { recursive: true })
  await writeFile(join(from, 'pots', 'a.pot.json'), 'a pot')
  await writeFile(join(from, '.in-use-shed'), '1')
  return { home, from, to }
}

test('an empty folder gets a copy of everything but the lock, and is used from then on', async () => {
  const { home, from, to } = await places()
  expect(await chosenFolder(home)).toBeUndefined()
  expect(await chooseFolder(home, from, to)).toEqual({ ok: true, value: { outcome: 'copied' } })
  expect(await chosenFolder(home)).toBe(to)
  expect(await readFile(join(to, 'pots', 'a.pot.json'), 'utf8')).toBe('a pot')
  expect(await readdir(to)).toEqual(['pots'])
  expect(await readdir(from)).toContain('pots')
})

test('a folder with data of its own is taken as it is', async () => {
  const { home, from, to } = await places()
  await mkdir(join(to, 'waters'), { recursive: true })
  expect(await chooseFolder(home, from, to)).toEqual({ ok: true, value: { outcome: 'found' } })
  expect(await readdir(to)).toEqual(['waters'])
})

test.each(['old/inside', '.', 'old'])('%s is refused: one would lie inside the other', async (place) => {
  const { home, from } = await places()
  expect(await chooseFolder(home, from, join(folder(), place))).toMatchObject({ ok: false })
  expect(await chosenFolder(home)).toBeUndefined()
})

test('a folder with something else in it is refused and left alone', async () => {
  const { home, from, to } = await places()
  await mkdir(to)
  await writeFile(join(to, 'holiday.txt'), 'x')
  expect(await chooseFolder(home, from, to)).toMatchObject({ ok: false, error: { code: 'invalid' } })
  expect(await readdir(to)).toEqual(['holiday.txt'])
})
