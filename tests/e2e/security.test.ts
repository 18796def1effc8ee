import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { editions } from './app'
import { desktopLaunch, openDesktopEdition, type OpenedDesktop } from './desktop-edition'

/* A page that has been taken over tries to get out of the real desktop program. */

const missing = editions.some(({ edition, missing: gone }) => edition === 'desktop' && gone)

describe.skipIf(missing)('a hostile page in the desktop edition', () => {
  let folder = ''
  let desktop: OpenedDesktop
  const places = () => ({ home: join(folder, 'home'), dataFolder: join(folder, 'data') })

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'potwright-hostile-'))
    await mkdir(places().home, { recursive: true })
    await writeFile(join(folder, 'secret.txt'), 'secret')
    desktop = await openDesktopEdition(places())
  }, 60_000)
  afterAll(async () => {
    await desktop.close()
    await rm(folder, { recursive: true, force: true })
  })

  const here = () => desktop.page.evaluate(() => location.href)

  test('is its own page, with two functions of ours and nothing of the system', async () => {
    expect(await here()).toMatch(/^app:\/\/main\//)
    const found = await desktop.page.evaluate(() => ({
      ours: ['bridge', 'onNotice'].filter((name) => name in window),
      system: ['require', 'process', 'module', 'Buffer', 'ipcRenderer', 'electron'].filter(
        (name) => name in window,
      ),
      secure: isSecureContext,
    }))
    expect(found).toEqual({ ours: ['bridge', 'onNotice'], system: [], secure: true })
  })

  test.each(['https://example.org/', 'file:///etc/passwd', 'data:text/html,hello', 'app://other/index.html'])(
    'cannot go to %s',
    async (address) => {
      const before = await here()
      await desktop.page.evaluate((to) => {
        location.href = to
      }, address)
      await desktop.page.waitForTimeout(300)
      expect(await here()).toBe(before)
    },
  )

  test.each(['https://example.org/', 'app://main/index.html', 'about:blank', 'file:///etc/passwd'])(
    'cannot open a window on %s',
    async (address) => {
      expect(await desktop.page.evaluate((to) => window.open(to) === null, address)).toBe(true)
      expect(desktop.app.windows()).toHaveLength(1)
    },
  )

  test.each([
    'app://main/../../secret.txt',
    'app://main/..%2f..%2fsecret.txt',
    'app://main/%2e%2e%2f%2e%2e%2fmain%2findex.js',
    'app://main/..%5c..%5csecret.txt',
    'app://main/%2fetc%2fpasswd',
    'file:///etc/passwd',
  ])('cannot read %s', async (address) => {
    const text = await desktop.page.evaluate(
      (from) =>
        fetch(from)
          .then((response) => (response.ok ? response.text() : ''))
          .catch(() => ''),
      address,
    )
    expect(text).toBe('')
  })

  test('cannot run a script that was put into the page, nor send anything away', async () => {
    const outcome = await desktop.page.evaluate(async () => {
      const script = document.createElement('script')
      script.textContent = 'window.takenOver = true'
      document.body.append(script)
      const button = document.createElement('button')
      button.setAttribute('onclick', 'window.takenOver = true')
      button.click()
      const sent = await fetch('https://example.org/', { mode: 'no-cors' }).then(
        () => true,
        () => false,
      )
      return { takenOver: 'takenOver' in window, sent }
    })
    expect(outcome).toEqual({ takenOver: false, sent: false })
  })

  test('cannot call the bridge from a frame', async () => {
    const frames = await desktop.page.evaluate(async () => {
      const frame = document.createElement('iframe')
      frame.src = 'index.html'
      document.body.append(frame)
      await new Promise((done) => setTimeout(done, 500))
      const inner = frame.contentWindow as (Window & { bridge?: unknown }) | null
      try {
        return { bridge: inner?.bridge !== undefined }
      } catch {
        return { bridge: false }
      } finally {
        frame.remove()
      }
    })
    expect(frames).toEqual({ bridge: false })
  })

  test('is refused even where a frame gets hold of the channel itself', async () => {
    const refused = await desktop.app.evaluate(async ({ ipcMain }) => {
      const handlers = (
        ipcMain as unknown as { _invokeHandlers: Map<string, (...args: unknown[]) => unknown> }
      )._invokeHandlers
      const handler = handlers.get('potwright:call')
      const senders = [
        { url: 'app://main/index.html', parent: {} },
        { url: 'https://example.org/', parent: null },
        null,
      ]
      return Promise.all(
        senders.map(async (senderFrame) => {
          try {
            await handler?.({ senderFrame }, 'pots:list', {})
            return 'answered'
          } catch (error) {
            return String(error)
          }
        }),
      )
    })
    expect(refused).toEqual(Array(3).fill('Error: refused sender'))
  })

  test('gets no permission', async () => {
    const states = await desktop.page.evaluate(async () => {
      const asked = await Notification.requestPermission()
      const position = await new Promise((done) =>
        navigator.geolocation.getCurrentPosition(
          () => done('given'),
          () => done('denied'),
        ),
      )
      const camera = await navigator.mediaDevices.getUserMedia({ video: true }).then(
        () => 'given',
        () => 'denied',
      )
      return { asked, position, camera }
    })
    expect(states).toEqual({ asked: 'denied', position: 'denied', camera: 'denied' })
  })

  test.each([
    ['pots:get', { id: '../../secret' }],
    ['pots:burn', {}],
    ['__proto__', {}],
  ])('is answered by a refusal when it asks %s %j', async (channel, request) => {
    const reply = await desktop.page.evaluate(
      ([name, body]) =>
        (window as unknown as { bridge: (channel: unknown, request: unknown) => Promise<unknown> }).bridge(
          name,
          body,
        ),
      [channel, request] as const,
    )
    expect(reply).toMatchObject({ ok: false })
  })

  test('a second start leaves before it touches the data and hands over its file', async () => {
    const file = join(folder, 'from-outside.pot.json')
    await writeFile(file, '{"format":"potwright/pot"}')
    const opened = desktop.page.evaluate(
      () =>
        new Promise((done) => {
          const { onNotice } = window as unknown as {
            onNotice: (listener: (notice: unknown) => void) => void
          }
          onNotice(done)
        }),
    )
    const { executablePath, args, env } = desktopLaunch(places(), [file])
    const second = spawn(executablePath, args, { env, stdio: 'ignore' })
    const [code] = (await once(second, 'exit')) as [number]
    expect(code).toBe(0)
    expect(await opened).toEqual({
      kind: 'opened',
      fileName: 'from-outside.pot.json',
      text: '{"format":"potwright/pot"}',
    })
    expect(await readFile(join(places().dataFolder, `.in-use-${await machineId()}`), 'utf8')).toBe(
      String(desktop.app.process().pid),
    )
  })

  const machineId = async () =>
    (JSON.parse(await readFile(join(places().home, 'machine.json'), 'utf8')) as { id: string }).id
})
