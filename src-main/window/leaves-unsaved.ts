import { dialog } from 'electron'

/** Whether a window may close though its last changes could not be saved, as its reader says. */
export async function leavesUnsaved(): Promise<boolean> {
  const { response } = await dialog.showMessageBox({
    type: 'warning',
    message: 'The last changes could not be saved.',
    detail:
      'They are lost if Potwright is closed now. Stay to save them somewhere else or to free some space.',
    buttons: ['Stay', 'Close and lose them'],
    defaultId: 0,
    cancelId: 0,
  })
  return response === 1
}
