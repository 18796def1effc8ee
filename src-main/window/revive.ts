import { type BrowserWindow, dialog } from 'electron'

/** A window whose page died stays, blank: asks whether to open the page anew, and closes the window otherwise. */
export async function revive(
  window: Pick<BrowserWindow, 'reload' | 'destroy' | 'isDestroyed'>,
): Promise<void> {
  const { response } = await dialog.showMessageBox({
    type: 'error',
    message: 'Potwright stopped in this window.',
    detail: 'What was saved is safe. What went wrong is noted in crashes.log.',
    buttons: ['Open it again', 'Close'],
    defaultId: 0,
    cancelId: 1,
  })
  if (window.isDestroyed()) return
  if (response === 0) window.reload()
  else window.destroy()
}
