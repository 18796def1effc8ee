import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { readFile, readdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { describe, expect, test } from 'vitest'
import { builtProgram, sourceOf } from './built-program'
import { realDisk, type Disk, writeDurably } from './durable-write'
import { failing } from './failing-disk'
import { diskError } from './storage-fault'
import { temporaryFolder } from './temporary-folder'

describe('writing durably', () => {
  const folder = temporaryFolder()

  test('makes the folder, keeps the text, and leaves nothing else behind', async () => {
    const path = join(folder(), 'deep', 'er', 'file.json')
    await writeDurably(path, 'one')
    await writeDurably(path, 'two')
    expect(await readFile(path, 'utf8')).toBe('two')
    expect(await readdir(join(folder(), 'deep', 'er'))).toEqual(['file.json'])
  })

  test('syncs the file before it takes its place, and the folder after', async () => {
    const steps: string[] = []
    const disk: Disk = {
      ...realDisk,
      open: async (path, flags) => {
        const handle = await realDisk.open(path, flags)
        const isFolder = (await handle.stat()).isDirectory()
        const sync = handle.sync.bind(handle)
        handle.sync = async () => {
          steps.push(isFolder ? 'sync folder' : 'sync file')
          await sync()
        }
        return handle
      },
      rename: async (from, to) => {
        steps.push('rename')
        await realDisk.rename(from, to)
      },
    }
    await writeDurably(join(folder(), 'file.json'), 'text', disk)
    expect(steps).toEqual(['sync file', 'rename', 'sync folder'])
  })

  test.each(['EPERM', 'EACCES', 'EBUSY'])('waits for a file held twice (%s)', async (code) => {
    const path = join(folder(), 'file.json')
    await writeDurably(path, 'old')
    await writeDurably(path, 'new', failing({ rename: [code, code] }))
    expect(await readFile(path, 'utf8')).toBe('new')
  })

  test('gives up on a file that stays held, and leaves the old one', async () => {
    const path = join(folder(), 'file.json')
    await writeDurably(path, 'old')
    const held = failing({ rename: Array<string>(20).fill('EBUSY') })
    await expect(writeDurably(path, 'new', held)).rejects.toThrow(/EBUSY/)
    expect(await readFile(path, 'utf8')).toBe('old')
    expect(await readdir(folder())).toEqual(['file.json'])
  })

  test.each([
    ['the disk is full while writing', { write: 'ENOSPC' }],
    ['the disk is full while syncing', { sync: 'ENOSPC' }],
  ])('leaves the old file when %s', async (_, faults) => {
    const path = join(folder(), 'file.json')
    await writeDurably(path, 'old')
    const thrown: unknown = await writeDurably(path, 'new', failing(faults)).catch((error: unknown) => error)
    expect(diskError(thrown)).toMatchObject({ code: 'storage', message: /disk is full/ })
    expect(await readFile(path, 'utf8')).toBe('old')
    expect(await readdir(folder())).toEqual(['file.json'])
  })

  test('two writers at once leave one whole text', async () => {
    const path = join(folder(), 'file.json')
    const texts = Array.from({ length: 20 }, (_, index) => String(index).repeat(5000))
    await Promise.all(texts.map((text) => writeDurably(path, text)))
    expect(texts).toContain(await readFile(path, 'utf8'))
    expect(await readdir(folder())).toEqual(['file.json'])
  })

  test('a process killed while it writes leaves the old file or a new one, whole', async () => {
    const path = join(folder(), 'file.json')
    await writeFile(path, JSON.stringify({ turn: -1, filler: '' }))
    const writer = await builtProgram(
      folder(),
      `import { writeSync } from 'node:fs'
       import { writeDurably } from ${sourceOf('./durable-write.ts')}
       const [, , path = ''] = process.argv
       for (let turn = 0; ; turn++) {
         await writeDurably(path, JSON.stringify({ turn, filler: 'x'.repeat(200_000) }))
         writeSync(1, '.')
       }`,
    )
    for (let round = 0; round < 12; round++) {
      const child = spawn(process.execPath, [writer, path], { stdio: ['ignore', 'pipe', 'inherit'] })
      await once(child.stdout, 'data')
      await pause(round * 3)
      child.kill('SIGKILL')
      await once(child, 'exit')
      const kept = JSON.parse(await readFile(path, 'utf8')) as { turn: number; filler: string }
      expect(kept.filler).toHaveLength(200_000)
      expect(kept.turn).toBeGreaterThanOrEqual(0)
    }
  })
})
