import { existsSync } from 'node:fs'
import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { samplePot } from '@main/storage/sample-pots'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { expect, test } from 'vitest'
import { openData } from './open-data'

const folder = temporaryFolder()

test('the day has its backup even where the program is closed before it was due', async () => {
  const opened = await openData({
    home: join(folder(), 'home'),
    dataFolder: join(folder(), 'data'),
    now: () => new Date('2026-12-05T10:00:00Z'),
    host: {
      ...{ edition: 'browser', version: '1.2.3', runtime: {} },
      licences: () => Promise.resolve([]),
      showMenu: () => undefined,
      flushed: () => undefined,
    },
  })
  if (!opened.ok) throw new Error(opened.error.message)
  const { services, close } = opened.value
  await services.handlers['pots:save']({ document: samplePot('mine') })
  const backups = join(folder(), 'data', 'backups')
  expect(existsSync(backups)).toBe(false)
  await close()
  expect(await readdir(backups)).toEqual(['20261205-100000-daily.backup.json.gz'])
})
