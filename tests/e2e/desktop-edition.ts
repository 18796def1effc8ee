import { once } from 'node:events'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { _electron, type ElectronApplication } from 'playwright-core'
import type { OpenedEdition, Places } from './app'
import { fetchedRuntime } from './electron-runtime.mjs'
import { softwareGraphics } from './software-graphics'

const main = fileURLToPath(new URL('../../out/main/index.js', import.meta.url))

export interface OpenedDesktop extends OpenedEdition {
  readonly app: ElectronApplication
}

/** Arguments and surroundings of the built desktop program under the test runtime. */
export function desktopLaunch({ home, dataFolder }: Places, more: readonly string[] = []) {
  const runtime = fetchedRuntime()
  if (runtime === undefined) throw new Error('the test runtime was not fetched')
  return {
    executablePath: runtime,
    // Test machines run as root, where the runtime refuses its sandbox; the program itself always asks for it.
    args: ['--no-sandbox', ...softwareGraphics, '--data', dataFolder, ...more],
    env: { ...stringsOf(process.env), POTWRIGHT_HOME: home, POTWRIGHT_TEST_MAIN: main },
  }
}

export async function openDesktopEdition(
  places: Places,
  more: readonly string[] = [],
): Promise<OpenedDesktop> {
  const app = await _electron.launch(desktopLaunch(places, more))
  const page = await app.firstWindow()
  await page.waitForLoadState()
  const ended = once(app.process(), 'exit')
  return {
    app,
    page,
    savedBy: async (act) => {
      const path = join(places.home, 'handed-over')
      const [state] = await Promise.all([app.evaluate(answerSaveDialog, path), act()])
      if (state !== 'completed') throw new Error(`the file was not kept: ${state}`)
      return readFile(path)
    },
    printed: async (act) => {
      const path = join(places.home, 'printed.pdf')
      await app.evaluate(({ dialog }, filePath) => {
        dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath })
      }, path)
      await act()
      await page.getByText('The PDF was saved.').waitFor()
      return readFile(path)
    },
    close: async () => {
      await app.close()
      await ended
    },
    kill: async () => {
      app.process().kill('SIGKILL')
      await ended
    },
  }
}

/** Stands in for the person at the system's save dialog, which no test can click; runs in the main process. */
const answerSaveDialog = ({ session }: typeof Electron.CrossProcessExports, path: string): Promise<string> =>
  new Promise((resolve) => {
    session.defaultSession.once('will-download', (_event, item) => {
      item.setSavePath(path)
      item.once('done', (_done, state) => {
        resolve(state)
      })
    })
  })

const stringsOf = (env: NodeJS.ProcessEnv): Record<string, string> =>
  Object.fromEntries(Object.entries(env).filter((entry): entry is [string, string] => entry[1] !== undefined))
