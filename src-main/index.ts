import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { app, dialog, ipcMain, powerMonitor, protocol, session } from 'electron'
import { citedHosts } from '@shared/rules/cited-hosts'
import { packFiles } from '@shared/rules/packs'
import { askForDataFolder } from './window/data-folder'
import { answerCalls } from './ipc/answer-calls'
import { sheetPrinter } from './printing/print-sheet'
import { openData } from './services/open-data'
import { readShippedAhead } from './services/packs-in-use'
import { readLicences } from './services/read-licences'
import { homeFolder } from './storage/home'
import { version } from './version'
import { servePage } from './window/app-pages'
import { noteCrash } from './window/crash-log'
import { denyPermissions } from './window/lock-down'
import { openWindow, type OpenWindow } from './window/open-window'
import { documentsIn, openedNotice } from './window/opened-files'
import { dataFolderArgument } from './window/start-arguments'

const built = (name: string) => fileURLToPath(new URL(name, import.meta.url))
const home = homeFolder(process.env, process.platform)
const now = () => new Date()

const stopOn = (thrown: unknown) => {
  noteCrash(home, now(), 'The program stopped on an error of its own.', thrown)
  app.exit(1)
}
process.on('uncaughtException', stopOn)
process.on('unhandledRejection', (reason) => noteCrash(home, now(), 'Something was left undone.', reason))

app.setName('Potwright')
app.setPath('userData', home)
app.setPath('sessionData', join(home, 'session'))
// Asked for of every process; whoever runs this as root, as test machines do, has to give it up by name.
if (!app.commandLine.hasSwitch('no-sandbox')) app.enableSandbox()
protocol.registerSchemesAsPrivileged([
  {
    scheme: 'app',
    privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true, codeCache: true },
  },
])

// Whoever comes second leaves before touching the disk; the first shows its window.
if (app.requestSingleInstanceLock())
  start().catch((thrown: unknown) => {
    dialog.showErrorBox(
      'Potwright could not start',
      `What went wrong is noted in ${join(home, 'crashes.log')}.`,
    )
    stopOn(thrown)
  })
else app.quit()

async function start(): Promise<void> {
  const shown: { window?: OpenWindow } = {}
  const waiting: string[] = documentsIn(process.argv, process.cwd())
  const openFile = async (path: string) => {
    if (!shown.window) return void waiting.push(path)
    const notice = await openedNotice(path)
    if (!notice) return
    // The system's own list of recent documents, where it keeps one.
    app.addRecentDocument(path)
    shown.window.tell(notice)
  }
  app.on('open-file', (event, path) => {
    event.preventDefault()
    void openFile(path)
  })
  app.on('second-instance', (_event, args, folder) => {
    shown.window?.window.restore()
    shown.window?.window.focus()
    for (const path of documentsIn(args, folder)) void openFile(path)
  })
  app.on('render-process-gone', (_event, _contents, details) =>
    noteCrash(home, now(), 'The window stopped.', details),
  )

  await app.whenReady()
  const data = await openData({
    home,
    dataFolder: dataFolderArgument(process.argv),
    now,
    host: {
      edition: 'desktop',
      version,
      runtime: {
        Electron: process.versions.electron,
        Chromium: process.versions.chrome,
        Node: process.versions.node,
      },
      licences: () => readLicences(['./licences.json', '../renderer/licences.json'].map(built)),
      showMenu: (groups) => shown.window?.showMenu(groups),
      flushed: (saved) => void shown.window?.closing.flushed(saved),
      chooseFolder: (inUse) => askForDataFolder(home, inUse, shown.window?.window),
      printer: sheetPrinter(() => shown.window?.window),
    },
  })
  if (!data.ok) {
    dialog.showErrorBox('Potwright could not open its data', data.error.message)
    app.exit(1)
    return
  }
  const { services, close } = data.value
  protocol.handle('app', (request) => servePage(request.url, built('../renderer')))
  denyPermissions(session.defaultSession)
  answerCalls(ipcMain, services.handlers, (thrown) => noteCrash(home, now(), 'A call failed.', thrown))
  powerMonitor.on('shutdown', () => shown.window?.tell({ kind: 'closing' }))

  // Everything is saved by now: the window let its page save before it closed.
  app.on('window-all-closed', () => void close().finally(() => app.quit()))
  const open = await openWindow(home, built('../preload/preload.cjs'), citedHosts(packFiles.values()))
  shown.window = open
  readShippedAhead()
  services.onNotice((notice) => open.tell(notice))
  await open.load()
  for (const path of waiting.splice(0)) await openFile(path)
}
