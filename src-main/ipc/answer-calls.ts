import type { IpcMain } from 'electron'
import { answerPage } from '@main/services/answer'
import { isOurTopFrame } from '@main/window/guards'
import type { Handlers } from '@shared/contract/contract'

/** Answers the page's calls. A call from anywhere but the window's own top frame is refused outright. */
export function answerCalls(
  ipcMain: IpcMain,
  handlers: Handlers,
  noteFault: (thrown: unknown) => void,
): void {
  ipcMain.handle('potwright:call', (event, channel: unknown, request: unknown) => {
    if (!isOurTopFrame(event.senderFrame)) throw new Error('refused sender')
    return answerPage(handlers, String(channel), request, noteFault)
  })
}
