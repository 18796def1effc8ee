import { readdir, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { lockFolder, type Machinery } from './folder-lock'
import { temporaryFolder } from './temporary-folder'

const data = temporaryFolder()
const now = () => new Date()
const lockPath = () => join(data(), '.in-use-shed')

describe('one program at a time', () => {
  test('the second is refused until the first is done', async () => {
    const first = await lockFolder(data(), 'shed', now)
    expect(await lockFolder(data(), 'shed', now)).toMatchObject({ ok: false, error: { code: 'unavailable' } })
    if (first.ok) await first.value.release()
    const second = await lockFolder(data(), 'shed', now)
    expect(second.ok).toBe(true)
    if (second.ok) await second.value.release()
    expect(await readdir(data())).toEqual([])
  })

  test('another machine on the same folder is not in the way', async () => {
    const shed = await lockFolder(data(), 'shed', now)
    const office = await lockFolder(data(), 'office', now)
    expect([shed.ok, office.ok]).toEqual([true, true])
    for (const lock of [shed, office]) if (lock.ok) await lock.value.release()
  })

  const ago = (ms: number) => new Date(Date.now() - ms)
  const machinery = (more: Partial<Machinery>): Machinery => ({
    isAlive: () => true,
    startedAt: () => ago(3_600_000).getTime(),
    pause: () => Promise.resolve(),
    ...more,
  })

  test.each([
    ['whose process is gone', '12345', now(), machinery({ isAlive: () => false })],
    ['that nobody touches, whatever has its number now', '1', ago(60_000), machinery({})],
    [
      'from before the machine was started, without a wait',
      '1',
      ago(60_000),
      machinery({
        startedAt: () => ago(30_000).getTime(),
        pause: () => Promise.reject(new Error('waited')),
      }),
    ],
    ['that was cut off', '', now(), undefined],
  ])('a lock %s is taken over', async (_, holder, touched, machine) => {
    await writeFile(lockPath(), holder)
    await utimes(lockPath(), touched, touched)
    const lock = await lockFolder(data(), 'shed', now, machine)
    expect(lock.ok).toBe(true)
    if (lock.ok) await lock.value.release()
  })

  test('a machine that slept for hours: a program that is there is given the time to touch its lock', async () => {
    await writeFile(lockPath(), '1')
    await utimes(lockPath(), ago(1_800_000), ago(1_800_000))
    let pauses = 0
    const pause = async () => {
      pauses += 1
      if (pauses === 19) await utimes(lockPath(), now(), now())
    }
    expect(await lockFolder(data(), 'shed', now, machinery({ pause }))).toMatchObject({
      error: { code: 'unavailable' },
    })
  })
})
