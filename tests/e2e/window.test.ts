import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterEach, describe, expect, test } from 'vitest'
import { editions } from './app'
import { ask } from './ask'
import { openDesktopEdition, type OpenedDesktop } from './desktop-edition'

/* What only the desktop window has: its menu, files opened from outside, a place on the screen. */

const missing = editions.some(({ edition, missing: gone }) => edition === 'desktop' && gone)
const fixture = fileURLToPath(new URL('../fixtures/main-channel.pot.json', import.meta.url))

describe.skipIf(missing)('the desktop window', () => {
  let folder = ''
  let desktop: OpenedDesktop | undefined
  const open = async (...more: string[]) => {
    if (folder === '') folder = await mkdtemp(join(tmpdir(), 'potwright-window-'))
    desktop = await openDesktopEdition({ home: join(folder, 'home'), dataFolder: join(folder, 'data') }, more)
    return desktop
  }
  afterEach(async () => {
    await desktop?.close()
    await rm(folder, { recursive: true, force: true })
    folder = ''
  })

  test('a pot file it was started with is taken in', async () => {
    const { page } = await open(fixture)
    await expect
      .poll(() => ask(page, 'pots:get', { id: 'main-channel-round' }), { timeout: 30_000 })
      .toMatchObject({ ok: true, value: { document: { name: 'Main channel round' } } })
  })

  test('its menu holds the page’s commands, and a choice is carried out', async () => {
    const { app, page } = await open()
    const choose = (id: string) =>
      app.evaluate(({ Menu }, wanted) => {
        const item = Menu.getApplicationMenu()?.getMenuItemById(wanted)
        item?.click()
        return item !== null && item !== undefined
      }, id)
    await expect.poll(() => choose('go-waters'), { timeout: 30_000 }).toBe(true)
    await expect.poll(() => page.evaluate(() => location.hash)).toMatch(/waters/)
  })

  test('it opens again where it was', async () => {
    const { app } = await open()
    await app.evaluate(({ BrowserWindow }) => {
      BrowserWindow.getAllWindows()[0]?.setBounds({ x: 40, y: 30, width: 900, height: 640 })
    })
    await desktop?.close()
    const again = await open()
    const bounds = await again.app.evaluate(({ BrowserWindow }) =>
      BrowserWindow.getAllWindows()[0]?.getBounds(),
    )
    expect(bounds).toMatchObject({ width: 900, height: 640 })
  })
})
