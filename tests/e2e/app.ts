import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { onTestFinished } from 'vitest'
import { openBrowserEdition } from './browser-edition'
import { openDesktopEdition } from './desktop-edition'
import { fetchedRuntime } from './electron-runtime.mjs'

/*
 * Opens the built program the way a user would, in either edition, on a data folder of its own. Journeys are
 * written once and run in both: `describe.each(editions)`.
 */

export type Edition = 'browser' | 'desktop'

/** What is open: one start of the program. */
export interface OpenedEdition {
  readonly page: Page
  /** What is in the file that the page hands over for keeping when `act` is done. */
  readonly savedBy: (act: () => Promise<void>) => Promise<Buffer>
  /** The PDF that comes of it when `act` asks for one. */
  readonly printed: (act: () => Promise<void>) => Promise<Buffer>
  /** Ends it as a user would. */
  readonly close: () => Promise<void>
  /** Ends it as a power cut would. */
  readonly kill: () => Promise<void>
}

export interface Places {
  readonly home: string
  readonly dataFolder: string
}

export interface RunningApp extends Places {
  readonly edition: Edition
  readonly page: Page
  /** Requests that left the machine, broken content rules and errors of the page; a journey expects none. */
  readonly troubles: string[]
  readonly savedBy: OpenedEdition['savedBy']
  readonly printed: OpenedEdition['printed']
  readonly restart: () => Promise<Page>
  /** Ends it as its user would, and leaves its data where it is. */
  readonly end: () => Promise<void>
  readonly kill: () => Promise<void>
  readonly close: () => Promise<void>
}

/** Both editions; the desktop one only where its runtime was fetched. */
export const editions: readonly { edition: Edition; missing: boolean }[] = [
  { edition: 'browser', missing: false },
  { edition: 'desktop', missing: fetchedRuntime() === undefined || !process.env['DISPLAY'] },
]

/** Opens one edition on an empty data folder, or on one prepared beforehand; it is closed when the test is over. */
export async function openApp(
  edition: Edition,
  prepare?: (places: Places) => Promise<void>,
  /** Arguments of the browser or of the desktop runtime. */
  more: readonly string[] = [],
): Promise<RunningApp> {
  const folder = await mkdtemp(join(tmpdir(), 'potwright-e2e-'))
  const places: Places = { home: join(folder, 'home'), dataFolder: join(folder, 'data') }
  await prepare?.(places)
  const troubles: string[] = []
  let opened = await open(edition, places, troubles, more)
  const close = async () => {
    await opened.close()
    await rm(folder, { recursive: true, force: true })
  }
  // Some journeys end it themselves.
  onTestFinished(() => close().catch(() => undefined))
  return {
    ...places,
    edition,
    troubles,
    get page() {
      return opened.page
    },
    restart: async () => {
      await opened.close()
      opened = await open(edition, places, troubles, more)
      return opened.page
    },
    savedBy: (act) => opened.savedBy(act),
    printed: (act) => opened.printed(act),
    end: () => opened.close(),
    kill: () => opened.kill(),
    close,
  }
}

/**
 * Opens the browser edition as on a machine without 3D: for journeys about something else, since drawing the pot in
 * software takes most of a journey's time.
 */
export const openPlainApp = (prepare?: (places: Places) => Promise<void>): Promise<RunningApp> =>
  openApp('browser', prepare, withoutGraphics)

/** Arguments that leave the browser no graphics. */
const withoutGraphics = ['--disable-gpu', '--disable-3d-apis']

async function open(
  edition: Edition,
  places: Places,
  troubles: string[],
  more: readonly string[],
): Promise<OpenedEdition> {
  const opened = await (edition === 'browser'
    ? openBrowserEdition(places, more)
    : openDesktopEdition(places, more))
  const own = new URL(opened.page.url())
  opened.page.on('request', (request) => {
    const url = new URL(request.url())
    if (url.host !== own.host && !['data:', 'blob:'].includes(url.protocol))
      troubles.push(`asked for ${request.url()}`)
  })
  opened.page.on('pageerror', (error) => troubles.push(error.message))
  opened.page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text())
  })
  return opened
}
