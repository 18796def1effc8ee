/*
 * Stands in for Electron in tests: importing the real one outside its own runtime tries to fetch it. It has the few
 * names that sources under test take from it, and each does nothing unless a test gives it something to do.
 */

export const dialog = {
  showMessageBox: (): Promise<{ response: number }> => Promise.resolve({ response: 1 }),
  showSaveDialog: (): Promise<{ canceled: boolean; filePath: string }> =>
    Promise.resolve({ canceled: true, filePath: '' }),
}

export const shell = {
  opened: [] as string[],
  openExternal: (url: string): Promise<void> => {
    shell.opened.push(url)
    return Promise.resolve()
  },
}
