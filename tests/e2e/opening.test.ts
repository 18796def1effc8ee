import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { chmod, chown, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { afterEach, describe, expect, test } from 'vitest'
import type { Pot } from '@shared/schema/pot'
import { editions, openApp, openPlainApp, type Places } from './app'
import { ask } from './ask'
import { chromiumOptions, serve } from './browser-edition'
import { dropFile } from './files'

/* The program opens: on an empty folder, on a damaged one, on one it may not write to, and by `npm start`. */

const start = fileURLToPath(new URL('../../src-main/launch/start.mjs', import.meta.url))

const pot: Pot = {
  format: 'potwright/pot',
  version: 1,
  id: 'kept',
  name: 'Kept pot',
  gearKind: 'pot',
  body: { shape: 'round', baseDiameterMm: 900, topDiameterMm: 900, heightMm: 320, folds: true, feet: 0 },
}

function cookieOf(door: Response) {
  const [name = '', value = ''] = door.headers.get('set-cookie')?.split(';')[0]?.split('=') ?? []
  return { name, value }
}

async function damage({ dataFolder }: Places) {
  for (const folder of ['pots', 'waters', 'settings', 'journal', 'packs'])
    await mkdir(join(dataFolder, folder), { recursive: true })
  await writeFile(join(dataFolder, 'pots', 'a.pot.json'), '\0'.repeat(300))
  await writeFile(join(dataFolder, 'pots', 'b.pot.json'), '{"format":"potwright/pot","version":9}')
  await writeFile(join(dataFolder, 'waters', 'c.water.json'), 'null')
  await writeFile(join(dataFolder, 'journal', 'other.jsonl'), 'not a line of ours\n{}\n')
  await writeFile(join(dataFolder, 'packs', 'US-WA.rules.json'), '[]')
}

describe.each(editions)('$edition edition', ({ edition, missing }) => {
  test.skipIf(missing)(
    'opens on an empty folder, asks nobody else for anything, and breaks no rule of the page',
    async () => {
      const app = await openApp(edition)
      await expect.poll(() => app.page.locator('#app').innerText(), { timeout: 30_000 }).toMatch(/Bench/)
      expect(await app.page.title()).toMatch(/Potwright/)
      await app.page.reload()
      await expect.poll(() => app.page.locator('#app').innerText(), { timeout: 30_000 }).toMatch(/Bench/)
      expect(app.troubles).toEqual([])
    },
  )

  test.skipIf(missing)('opens on a damaged folder, says what is wrong and loses nothing', async () => {
    const app = await openApp(edition, damage)
    expect(await ask(app.page, 'pots:list', {})).toMatchObject({
      ok: true,
      value: { items: [], problems: [{ kind: 'set-aside', documentId: 'a' }, { kind: 'newer' }] },
    })
    expect(await ask(app.page, 'journal:list', {})).toMatchObject({
      value: { problems: [{ file: 'other.jsonl', line: 1 }] },
    })
    await app.page
      .getByText(/A damaged file was set aside as a\.pot\.json\.bad-/)
      .first()
      .waitFor()
    const names = await readdir(join(app.dataFolder, 'pots'))
    expect(names.filter((name) => /^a\.pot\.json\.bad-\d{8}-\d{6}\.json$/.test(name))).toHaveLength(1)
    expect(names).toContain('b.pot.json')
  })

  test.skipIf(missing)('puts the last good version of a damaged file back', async () => {
    const app = await openApp(edition)
    const good = { ...pot, name: 'Good one' }
    expect(await ask(app.page, 'pots:save', { document: good })).toMatchObject({ ok: true })
    const file = join(app.dataFolder, 'pots', 'kept.pot.json')
    const before = await readFile(file, 'utf8')
    await app.kill()
    await writeFile(file, before.slice(0, before.length / 2))
    const page = await app.restart()
    await page
      .getByText(/A damaged file was set aside/)
      .first()
      .waitFor()
    await page.getByRole('button', { name: 'Shelf' }).click()
    await page.getByRole('button', { name: 'Put it back' }).click()
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Good one/ })
      .waitFor()
    expect(await readFile(file, 'utf8')).toBe(before)
  })

  test.skipIf(missing)('takes in a design dropped anywhere, and shows it', async () => {
    const app = await openApp(edition)
    const { page } = app
    await page.getByRole('heading', { name: 'Where to start' }).waitFor()
    await page.keyboard.press('Alt+6')
    await page.getByRole('heading', { level: 1, name: 'Season' }).waitFor({ state: 'attached' })
    const fromFriend = JSON.stringify({ ...pot, name: 'From a friend' })
    await dropFile(page, 'kept.pot.json', Buffer.from(fromFriend))
    await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor({ state: 'attached' })
    await expect.poll(() => page.getByLabel('Name of the design').inputValue()).toBe('From a friend')
    expect(await readdir(join(app.dataFolder, 'pots'))).toEqual(['kept.pot.json'])
  })
})

test('without a graphics card it says so, describes the pot in words, and checks it all the same', async () => {
  const app = await openPlainApp()
  const { page } = app
  await page.getByText(/This machine cannot draw in 3D/).waitFor()
  await page.getByText(/^Standard round: a round pot/).waitFor()
  await page.getByRole('region', { name: 'Base ring' }).getByRole('slider').fill('6')
  const holds = page.getByRole('region', { name: 'Verdicts' }).getByRole('button', { name: /Holds bottom/ })
  await expect.poll(() => holds.textContent()).toContain('Fails')
  expect(app.troubles.filter((line) => !/WebGL/i.test(line))).toEqual([])
})

describe('browser edition from the command line', () => {
  let folder = ''
  afterEach(async () => {
    await chmod(join(folder, 'data'), 0o700).catch(() => undefined)
    await rm(folder, { recursive: true, force: true })
  })

  async function places(): Promise<Places> {
    folder = await mkdtemp(join(tmpdir(), 'potwright-open-'))
    const made = { home: join(folder, 'home'), dataFolder: join(folder, 'data') }
    for (const one of Object.values(made)) await mkdir(one)
    return made
  }

  test('a second one on the same folder is refused, by name', async () => {
    const where = await places()
    const first = await serve(where)
    await expect(serve(where)).rejects.toThrow(/already open on this data folder/)
    await first.end('SIGTERM')
    const again = await serve(where)
    await again.end('SIGKILL')
    const afterCrash = await serve(where)
    await afterCrash.end('SIGTERM')
  })

  test('a data folder that can only be read opens, says so, and saves nothing', async () => {
    const { home, dataFolder } = await places()
    await chmod(dataFolder, 0o555)
    // Whoever runs as root may write anywhere, so the program runs as nobody.
    const nobody = process.getuid?.() === 0 ? 65534 : undefined
    if (nobody !== undefined) {
      await chmod(folder, 0o755)
      await chown(home, nobody, nobody)
    }
    const { entrance, end } = await serve({ home, dataFolder }, nobody)
    const door = await fetch(entrance, { redirect: 'manual' })
    const call = async (channel: string, request: unknown) => {
      const response = await fetch(new URL(`/call/${channel}`, entrance), {
        method: 'POST',
        headers: {
          'content-type': 'application/json',
          cookie: door.headers.get('set-cookie')?.split(';')[0] ?? '',
        },
        body: JSON.stringify(request),
      })
      return response.json() as Promise<unknown>
    }
    expect(await call('app:info', {})).toMatchObject({
      value: { readOnly: expect.stringMatching(/may not write/) },
    })
    const browser = await chromium.launch(chromiumOptions)
    const page = await browser.newPage()
    await page.context().addCookies([{ ...cookieOf(door), url: entrance }])
    await page.goto(new URL('/', entrance).href)
    await page.getByText(/may not write to the data folder.*look at everything and print it/).waitFor()
    await browser.close()
    expect(await call('pots:list', {})).toEqual({ ok: true, value: { items: [], problems: [] } })
    expect(await call('settings:set', { set: { units: 'imperial' } })).toMatchObject({
      error: { code: 'read_only' },
    })
    await end('SIGTERM')
    expect(await readdir(dataFolder)).toEqual([])
  })

  test('npm start opens it where there is no display, says why, and how to get the window', async () => {
    const { home, dataFolder } = await places()
    const child = spawn(process.execPath, [start, '--data', dataFolder], {
      env: { ...process.env, POTWRIGHT_HOME: home, DISPLAY: '', WAYLAND_DISPLAY: '', CI: '1' },
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    const ended = once(child, 'exit')
    const lines: string[] = []
    for await (const line of createInterface(child.stdout)) {
      lines.push(line)
      if (line.includes('Ctrl+C')) break
    }
    const text = lines.join('\n')
    expect(text).toMatch(/browser edition, because there is no display here/)
    expect(text).toMatch(/For the desktop window/)
    const entrance = /http:\/\/127\.0\.0\.1:\d+\/\?token=\S+/.exec(text)?.[0] ?? ''
    expect((await fetch(entrance, { redirect: 'manual' })).status).toBe(303)
    child.kill('SIGTERM')
    await ended
  })
})
