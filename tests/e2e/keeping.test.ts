import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterEach, describe, expect, test } from 'vitest'
import type { Pot } from '@shared/schema/pot'
import { editions, openApp, type RunningApp } from './app'
import { ask } from './ask'

/* What is kept is kept: across a restart, a kill in the middle of saving, and damage to the folder. */

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
