import { dialog, type Session, shell, type WebContents } from 'electron'
import { allowsPermission, decideLink, isOurPage } from './guards'

/** Denies every permission a page could ask for. */
export function denyPermissions(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(allowsPermission()))
  session.setPermissionCheckHandler(() => allowsPermission())
  session.setDevicePermissionHandler(() => allowsPermission())
}

/** Keeps a window on the program's own pages; links out go to the user's browser, if cited and agreed. */
export function lockDown(contents: WebContents, citedHosts: ReadonlySet<string>): void {
  const stay = (event: { preventDefault: () => void }, address: string) => {
    if (!isOurPage(address)) event.preventDefault()
  }
  contents.on('will-navigate', (event) => stay(event, event.url))
  contents.on('will-redirect', (event) => stay(event, event.url))
  contents.on('will-frame-navigate', (event) => stay(event, event.url))
  contents.on('will-attach-webview', (event) => event.preventDefault())
  contents.setWindowOpenHandler(({ url }) => {
    if (decideLink(url, citedHosts) === 'ask') void openOutside(url)
    return { action: 'deny' }
  })
}

async function openOutside(url: string): Promise<void> {
  const { response } = await dialog.showMessageBox({
    type: 'question',
    message: 'Open this page in your browser?',
    detail: url,
    buttons: ['Open', 'Stay here'],
    defaultId: 0,
    cancelId: 1,
  })
  if (response === 0) await shell.openExternal(url)
}
