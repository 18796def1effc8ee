import { mkdtemp, readFile, rm } from 'node:fs/promises'
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

  test('the window’s menu offers the designs that lay on the Bench last', async () => {
    const { app, page } = await open(fixture)
    await expect.poll(() => page.getByLabel('Name of the design').inputValue()).toBe('Main channel round')
    await page.keyboard.press('Control+k')
    await page.keyboard.type('Box with one-way doors')
    await page.keyboard.press('Enter')
    await page.getByRole('img', { name: /^Box with one-way doors/ }).waitFor()
    await expect
      .poll(() =>
        app.evaluate(({ Menu }) => {
          const recent = Menu.getApplicationMenu()?.items.find(({ label }) => label === 'Recent')
          const item = recent?.submenu?.items.find(({ label }) => label === 'Open Main channel round')
          item?.click()
          return item !== undefined
        }),
      )
      .toBe(true)
    await page.getByRole('img', { name: /^Main channel round/ }).waitFor()
  })

  test('what was changed a moment before the session ends is on disk', async () => {
    const { app, page } = await open(fixture)
    const name = page.getByLabel('Name of the design')
    await expect.poll(() => name.inputValue()).toBe('Main channel round')
    // Time stands still for the page, so that it cannot save by its own delay.
    await page.clock.install()
    await page.clock.pauseAt(Date.now() + 1000)
    await name.fill('Just before the end')
    await app.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.emit('session-end'))
    const saved = join(folder, 'data', 'pots', 'main-channel-round.pot.json')
    await expect.poll(() => readFile(saved, 'utf8')).toContain('Just before the end')
  })

  test('a page that stops is opened anew once its reader says so, and the crash is noted here', async () => {
    const { app, page } = await open(fixture)
    await expect.poll(() => page.getByLabel('Name of the design').inputValue()).toBe('Main channel round')
    const revived = app.evaluate(
      ({ BrowserWindow, dialog }) =>
        new Promise((done) => {
          dialog.showMessageBox = () => Promise.resolve({ response: 0, checkboxChecked: false })
          const contents = BrowserWindow.getAllWindows()[0]?.webContents
          contents?.once('did-finish-load', () => {
            void contents.executeJavaScript('document.title').then(done)
          })
          contents?.forcefullyCrashRenderer()
        }),
    )
    expect(await revived).toMatch(/Potwright/)
    expect(await readFile(join(folder, 'home', 'crashes.log'), 'utf8')).toMatch(
      /The window stopped\.\n\{"reason":"(crashed|killed)"/,
    )
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
