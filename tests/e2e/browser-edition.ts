import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { readFile } from 'node:fs/promises'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import type { OpenedEdition, Places } from './app'
import { softwareGraphics } from './software-graphics'

const program = fileURLToPath(new URL('../../out/main/potwright.js', import.meta.url))

export const chromiumOptions = {
  executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    ...softwareGraphics,
    '--ignore-gpu-blocklist',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--disable-quic',
  ],
}

/** Serves the built program, as another user where one is named, and returns the address that it prints. */
export async function serve({ home, dataFolder }: Places, user?: number) {
  const child = spawn(process.execPath, [program, 'serve', '--json', '--data', dataFolder], {
    env: { ...process.env, POTWRIGHT_HOME: home },
    stdio: ['ignore', 'pipe', 'pipe'],
    ...(user === undefined ? {} : { uid: user, gid: user }),
  })
  let complaints = ''
  child.stderr.on('data', (part: Buffer) => (complaints += part.toString()))
  const ended = once(child, 'exit')
  const line = await Promise.race([
    once(createInterface(child.stdout), 'line').then(([text]) => String(text)),
    ended.then(() => Promise.reject(new Error(`the program ended before it opened: ${complaints}`))),
  ])
  const { entrance } = JSON.parse(line) as { entrance: string }
  const end = async (signal: NodeJS.Signals) => {
    child.kill(signal)
    await ended
  }
  return { entrance, end, processId: child.pid }
}

export async function openBrowserEdition(
  places: Places,
  more: readonly string[] = [],
): Promise<OpenedEdition> {
  const host = await serve(places)
  const browser = await chromium.launch({ ...chromiumOptions, args: [...chromiumOptions.args, ...more] })
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  await page.goto(host.entrance)
  const end = (signal: NodeJS.Signals) => async () => {
    await browser.close()
    await host.end(signal)
  }
  const savedBy = async (act: () => Promise<void>) => {
    const [download] = await Promise.all([page.waitForEvent('download'), act()])
    return readFile(await download.path())
  }
  // The browser's own print dialog cannot be clicked: what it would print is taken when the page asks for it.
  const printed = async (act: () => Promise<void>) => {
    await page.evaluate(() => {
      window.print = () => (document.documentElement.dataset['asked'] = 'print')
    })
    await act()
    await page.locator('html[data-asked="print"]').waitFor({ state: 'attached' })
    return page.pdf({ preferCSSPageSize: true, tagged: true, outline: true, printBackground: true })
  }
  return { page, savedBy, printed, close: end('SIGTERM'), kill: end('SIGKILL') }
}
