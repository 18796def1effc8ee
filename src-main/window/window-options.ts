import type { BrowserWindowConstructorOptions } from 'electron'
import type { WindowBounds } from './window-bounds'

/** How the window is made: the page inside is shut off from everything but the bridge. */
export function windowOptions(preload: string, bounds: WindowBounds): BrowserWindowConstructorOptions {
  const { x, y, width, height } = bounds
  return {
    width,
    height,
    ...(x === undefined || y === undefined ? {} : { x, y }),
    minWidth: 720,
    minHeight: 520,
    show: false,
    backgroundColor: '#1d262d',
    title: 'Potwright',
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  }
}
