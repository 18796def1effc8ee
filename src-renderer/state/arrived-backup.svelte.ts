/** A file of everything that was dropped on the window, on its way to where backups are. */
class ArrivedBackup {
  file = $state.raw<File>()

  /** The file, once. */
  take(): File | undefined {
    const { file } = this
    this.file = undefined
    return file
  }
}

export const arrivedBackup = new ArrivedBackup()
