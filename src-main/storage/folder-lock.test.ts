import { readdir, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { lockFolder } from './folder-lock'
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

  test.each([
    ['whose process is gone', '12345', now(), () => false],
    [
      'that nobody touched for a while, whatever has its number now',
      '1',
      new Date(Date.now() - 60_000),
      () => true,
    ],
    ['that was cut off', '', now(), undefined],
  ])('a lock %s is taken over', async (_, holder, touched, isAlive) => {
    await writeFile(lockPath(), holder)
    await utimes(lockPath(), touched, touched)
    const lock = await lockFolder(data(), 'shed', now, isAlive)
    expect(lock.ok).toBe(true)
    if (lock.ok) await lock.value.release()
  })
})
