import type { Bridge, OnNotice } from '@shared/contract/bridge'
import type { AppError } from '@shared/units/result'
import { pageId } from './page-id'

declare global {
  interface Window {
    /** Put there by the desktop edition's preload, or by a test. */
    bridge?: Bridge
    onNotice?: OnNotice
  }
}

/** Asks the services: through the window's own bridge in the desktop edition, over HTTP in the browser edition. */
export const bridge: Bridge = (channel, request) => (window.bridge ?? overHttp)(channel, request)

const overHttp: Bridge = async (channel, request) => {
  try {
    const body = JSON.stringify(request)
    const response = await fetch(`/call/${encodeURIComponent(channel)}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'x-page': pageId },
      body,
      // What is saved as a page closes has to arrive after it is gone; a browser does that for small texts alone.
      keepalive: body.length < mostKeptAlive,
    })
    // The host answers every call with a result, whatever the status.
    return (await response.json()) as never
  } catch {
    return { ok: false, error: unreachable }
  }
}

/** Browsers keep 64 kB of calls on their way together, counted in bytes; a letter may take three. */
const mostKeptAlive = 16_000

const unreachable: AppError = {
  code: 'unavailable',
  message:
    'Potwright no longer answers in this browser. Nothing was changed. Start it again and open the address it prints.',
}
