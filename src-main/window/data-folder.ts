import { type BrowserWindow, dialog } from 'electron'
import { chooseFolder } from '@main/storage/data-place'
import { asResult } from '@main/storage/storage-fault'
import type { Reply } from '@shared/contract/contract'
import { ok, type Result } from '@shared/units/result'

/** Asks where the data is to be kept, and has it so from the next start on. */
export async function askForDataFolder(
  home: string,
  inUse: string,
  window: BrowserWindow | undefined,
): Promise<Result<Reply<'app:choose-folder'>>> {
  const options = {
    title: 'Choose a folder for the data of Potwright',
    properties: ['openDirectory' as const, 'createDirectory' as const],
  }
  const { canceled, filePaths } = await (window
    ? dialog.showOpenDialog(window, options)
    : dialog.showOpenDialog(options))
  const [chosen] = filePaths
  if (canceled || chosen === undefined) return ok({ outcome: 'kept' })
  return asResult(() => chooseFolder(home, inUse, chosen))
}
