import type { Notice, OnNotice } from '@shared/contract/bridge'
import { pageId } from './page-id'

/** What the services say without being asked: by the window's own bridge, or as a stream of events. */
export const onHostNotice: OnNotice = (listener) => (window.onNotice ?? overEvents)(listener)

const overEvents: OnNotice = (listener) => {
  const stream = new EventSource(`/notices?page=${pageId}`)
  // The host on this machine is the only sender.
  stream.onmessage = (event) => listener(JSON.parse(String(event.data)) as Notice)
  return () => stream.close()
}
