import { readdir, readFile, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { temporaryPrefix, writeDurably } from './durable-write'
import { defaultDataFolder, homeFolder } from './home'
import { thisMachine } from './machine'
import { migrate } from './migrate'
import { sweepTemporary } from './sweep'
import { temporaryFolder } from './temporary-folder'
import { fromTimeStamp, timeStamp } from './time-stamp'

const home = temporaryFolder()
const now = () => new Date('2026-12-05T10:00:00Z')

describe('which machine this is', () => {
  test('is settled on first use and stays', async () => {
    const first = await thisMachine(home(), () => 'one', now)
    expect(first.id).toBe('one')
    expect(await thisMachine(home(), () => 'two', now)).toEqual(first)
  })

  test('is settled anew where its file is damaged, which is set aside', async () => {
    await writeFile(join(home(), 'machine.json'), '\0\0\0')
    expect((await thisMachine(home(), () => 'two', now)).id).toBe('two')
    expect((await readdir(home())).sort()).toEqual(['machine.json', 'machine.json.bad-20261205-100000.json'])
  })
})

test.each([
  [{ POTWRIGHT_HOME: '/own' }, 'linux', '/own'],
  [{ XDG_CONFIG_HOME: '/xdg' }, 'linux', '/xdg/potwright'],
  [{}, 'linux', '/home/jo/.config/potwright'],
  [{ XDG_CONFIG_HOME: '' }, 'linux', '/home/jo/.config/potwright'],
  [{}, 'darwin', '/home/jo/Library/Application Support/Potwright'],
  [{ APPDATA: '/roaming' }, 'win32', '/roaming/Potwright'],
] as const)('the home folder with %j on %s is %s', (env, platform, folder) => {
  expect(homeFolder(env, platform, '/home/jo')).toBe(folder)
  expect(defaultDataFolder(folder)).toBe(join(folder, 'data'))
})

test('a moment in a file name comes back, and sorts by time', () => {
  expect(timeStamp(now())).toBe('20261205-100000')
  expect(fromTimeStamp('20261205-100000')).toEqual(now())
  expect(fromTimeStamp('20261345-100000')).toBeUndefined()
  expect(fromTimeStamp('elsewhere')).toBeUndefined()
})

test('leftovers of killed processes go, what is being written now stays', async () => {
  const old = join(home(), `${temporaryPrefix}old`)
  await writeFile(old, '')
  await utimes(old, new Date('2026-12-05T08:00:00Z'), new Date('2026-12-05T08:00:00Z'))
  const fresh = join(home(), `${temporaryPrefix}fresh`)
  await writeFile(fresh, '')
  await utimes(fresh, now(), now())
  await writeDurably(join(home(), 'kept.json'), '{}')
  await sweepTemporary(home(), now())
  expect((await readdir(home())).sort()).toEqual([`${temporaryPrefix}fresh`, 'kept.json'])
  expect(await readFile(join(home(), 'kept.json'), 'utf8')).toBe('{}')
})

describe('bringing old documents up to date', () => {
  const steps = [
    (old: Record<string, unknown>) => ({ ...old, version: 2, b: 1 }),
    (old: Record<string, unknown>) => ({ ...old, version: 3, c: 2 }),
  ]

  test.each([
    [{ version: 1 }, { version: 3, b: 1, c: 2 }],
    [{ version: 2 }, { version: 3, c: 2 }],
    [{ version: 3 }, { version: 3 }],
    [{ version: 9 }, { version: 9 }],
    [{ version: 0 }, { version: 0 }],
    [{ version: 1.5 }, { version: 1.5 }],
    [{}, {}],
    [null, null],
    [[], []],
  ])('%j becomes %j', (old, expected) => {
    expect(migrate(old, steps)).toEqual(expected)
  })
})
