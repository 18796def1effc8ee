import { BrowserWindow, Menu, screen } from 'electron'
import type { MenuGroups } from '@shared/contract/app'
import type { Notice } from '@shared/contract/bridge'
import { appStart } from './app-pages'
import { Closing } from './closing'
import { leavesUnsaved } from './leaves-unsaved'
import { lockDown } from './lock-down'
import { menuTemplate } from './menu'
import { NoticePost } from './notice-post'
import { revive } from './revive'
import { fitToScreens } from './window-bounds'
import { rememberBounds, rememberedBounds } from './window-memory'
import { windowOptions } from './window-options'

export interface OpenWindow {
  readonly window: BrowserWindow
  readonly tell: (notice: Notice) => void
  /** Puts the page's own commands into the menu bar. */
  readonly showMenu: (groups: MenuGroups) => void
  readonly closing: Closing
  /** Loads the page; what it calls while it loads finds the window in place. */
  readonly load: () => Promise<void>
}

/** Makes the program's window, where it was last time and locked to its own pages; its page is loaded after. */
export async function openWindow(
  home: string,
  preload: string,
  citedHosts: ReadonlySet<string>,
): Promise<OpenWindow> {
  const areas = screen.getAllDisplays().map(({ workArea }) => workArea)
  const bounds = fitToScreens(await rememberedBounds(home), areas)
  const window = new BrowserWindow(windowOptions(preload, bounds))
  lockDown(window.webContents, citedHosts)

  const post = new NoticePost((notice) => {
    if (!window.isDestroyed()) window.webContents.send('potwright:notice', notice)
  })
  window.webContents.ipc.on('potwright:listening', () => post.deliver())
  const tell = (notice: Notice) => post.send(notice)
  // Where a window was is not worth stopping for; a half-written note of it is not worth leaving behind.
  let remembered = Promise.resolve()
  const closing = new Closing(
    () => tell({ kind: 'closing' }),
    () => void remembered.finally(() => window.destroy()),
    leavesUnsaved,
  )
  window.on('close', (event) => {
    const kept = { ...window.getNormalBounds(), maximised: window.isMaximized() }
    remembered = rememberBounds(home, kept).catch(() => undefined)
    if (!closing.begin()) event.preventDefault()
  })
  // Windows ends a session without closing windows in the usual way.
  window.on('query-session-end', () => tell({ kind: 'closing' }))
  window.on('session-end', () => tell({ kind: 'closing' }))

  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason !== 'clean-exit') void revive(window)
  })

  const showMenu = (groups: MenuGroups) => {
    const choose = (command: string) => tell({ kind: 'command', command })
    Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform, groups, choose)))
  }
  showMenu([])
  if (bounds.maximised) window.maximize()
  window.once('ready-to-show', () => window.show())
  const load = () =>
    window.loadURL(appStart).catch((thrown: unknown) => {
      if (!window.isDestroyed()) throw thrown // closed before it had loaded is no fault
    })
  return { window, tell, showMenu, closing, load }
}
