import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium, type Page } from 'playwright-core'
import { afterEach, describe, expect, onTestFinished, test } from 'vitest'
import { startLocalHost } from '@main/local-host/local-host'
import { openTestServices } from '@main/services/open-test-services'
import { type Disk, realDisk } from '@main/storage/durable-write'
import { failing } from '@main/storage/failing-disk'
import type { Pot } from '@shared/schema/pot'
import { editions, openApp, type RunningApp } from './app'
import { ask } from './ask'
import { chromiumOptions, serve } from './browser-edition'

/* What is kept is kept: across a restart, a kill in the middle of saving, a second copy, and a full disk. */

const pot: Pot = {
  format: 'potwright/pot',
  version: 1,
  id: 'kept-pot',
  name: 'Kept pot',
  gearKind: 'pot',
  body: { shape: 'round', baseDiameterMm: 900, topDiameterMm: 900, heightMm: 320, folds: true, feet: 0 },
}

async function save(page: Page, document: Pot, revision?: string): Promise<string> {
  const saved = await ask(page, 'pots:save', { document, ...(revision ? { revision } : {}) })
  return (saved as { value: { revision: string } }).value.revision
}

describe.each(editions)('$edition edition', ({ edition, missing }) => {
  let app: RunningApp | undefined
  afterEach(async () => {
    await app?.close().catch(() => undefined) // some journeys end it themselves
    app = undefined
  })

  test.skipIf(missing)('finds a saved pot again after a restart', async () => {
    app = await openApp(edition)
    expect(await ask(app.page, 'pots:save', { document: pot })).toMatchObject({ ok: true })
    // A second copy on the same folder is turned away by name, and the first goes on.
    await expect(serve(app)).rejects.toThrow(
      /already open on this data folder. Use that one, or close it first/,
    )
    expect(await ask(app.page, 'settings:set', { set: { theme: 'dark' } })).toMatchObject({ ok: true })
    await app.restart()
    expect(await ask(app.page, 'pots:get', { id: pot.id })).toMatchObject({
      ok: true,
      value: { document: pot },
    })
  })

  test.skipIf(missing)('keeps a change made a moment before its window is closed', async () => {
    app = await openApp(edition)
    const { page, dataFolder } = app
    await page.getByLabel('Name of the design').fill('Changed at the last moment')
    // In a browser it is the tab that is closed; the host goes on.
    if (edition === 'browser') await page.close({ runBeforeUnload: true })
    else await app.end()
    await expect
      .poll(async () => {
        const [file = ''] = await readdir(join(dataFolder, 'pots'))
        return readFile(join(dataFolder, 'pots', file), 'utf8').catch(() => '')
      })
      .toContain('Changed at the last moment')
  })

  test.skipIf(missing)('keeps the old pot or the new one when killed while saving', async () => {
    app = await openApp(edition)
    const { page, dataFolder } = app
    let acknowledged = -1
    const saving = (async () => {
      let revision = await save(page, pot)
      for (let turn = 0; turn < 10_000; turn++) {
        revision = await save(page, { ...pot, notes: `${turn} ${'x'.repeat(3000)}` }, revision)
        acknowledged = turn
      }
    })().catch(() => undefined) // the page goes away under it
    await expect.poll(() => acknowledged, { timeout: 20_000 }).toBeGreaterThan(5)
    await app.kill()
    await saving
    const kept = JSON.parse(await readFile(join(dataFolder, 'pots', 'kept-pot.pot.json'), 'utf8')) as Pot
    expect({ ...kept, notes: undefined }).toEqual({ ...pot, notes: undefined })
    const [, turn, rest] = /^(\d+) (x+)$/.exec(kept.notes ?? '') ?? []
    expect(rest).toHaveLength(3000)
    expect(Number(turn)).toBeGreaterThanOrEqual(acknowledged)
    expect(
      (await readdir(join(dataFolder, 'pots'))).filter((name) => name.endsWith('.pot.json')),
    ).toHaveLength(1)
  })
})

test('a full disk is said once and loses nothing; with room again it is saved by itself, and another tab follows', async () => {
  const dataFolder = await mkdtemp(join(tmpdir(), 'potwright-full-'))
  let disk = failing({ write: 'ENOSPC' })
  const now: Disk = { ...realDisk, open: (...asked) => disk.open(...asked) }
  const services = await openTestServices(dataFolder, 'shed', { disk: now })
  const pages = fileURLToPath(new URL('../../out/renderer', import.meta.url))
  const faults: unknown[] = []
  const host = await startLocalHost({ services, pages, port: 0, noteFault: (thrown) => faults.push(thrown) })
  const browser = await chromium.launch(chromiumOptions)
  onTestFinished(async () => {
    await browser.close()
    await host.close()
    services.close()
    await rm(dataFolder, { recursive: true, force: true })
  })
  const tabs = await browser.newContext()
  const page = await tabs.newPage()
  await page.goto(host.entrance)
  const name = (tab: Page) => tab.getByLabel('Name of the design')
  const complaint = page.getByText('The disk is full. Nothing was lost')
  for (const text of ['First', 'Second']) {
    await Promise.all([page.waitForResponse(/pots%3Asave/), name(page).fill(text)])
    await page.getByText('Not saved').waitFor()
    await complaint.waitFor()
  }
  expect(await complaint.count()).toBe(1)
  expect(await readdir(join(dataFolder, 'pots'))).toEqual([])

  disk = realDisk
  await page.evaluate(() => dispatchEvent(new Event('focus')))
  await page.getByText('Saved', { exact: true }).waitFor()
  await complaint.waitFor({ state: 'detached' })
  const [file = ''] = await readdir(join(dataFolder, 'pots'))
  expect(JSON.parse(await readFile(join(dataFolder, 'pots', file), 'utf8'))).toMatchObject({ name: 'Second' })

  const tab = await tabs.newPage()
  await tab.goto(host.address)
  await expect.poll(() => name(tab).inputValue()).toBe('Second')
  await name(page).fill('Third')
  await expect.poll(() => name(tab).inputValue(), { timeout: 10_000 }).toBe('Third')
  expect(faults).toEqual([])
})
