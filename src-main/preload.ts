import { contextBridge, ipcRenderer } from 'electron'
import type { Bridge, Notice, OnNotice } from '@shared/contract/bridge'

// The interface gets these two functions and nothing of Electron. Channels are checked on the other side.
const bridge: Bridge = (channel, request) => ipcRenderer.invoke('potwright:call', channel, request)

const onNotice: OnNotice = (listener) => {
  const pass = (_: unknown, notice: Notice) => listener(notice)
  ipcRenderer.on('potwright:notice', pass)
  ipcRenderer.send('potwright:listening')
  return () => void ipcRenderer.off('potwright:notice', pass)
}

contextBridge.exposeInMainWorld('bridge', bridge)
contextBridge.exposeInMainWorld('onNotice', onNotice)
