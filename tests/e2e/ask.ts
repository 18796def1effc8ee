import type { Page } from 'playwright-core'
import type { Bridge } from '@shared/contract/bridge'

/** Asks the services through the page's own bridge, as the interface does. */
export async function ask(page: Page, channel: string, request: unknown): Promise<unknown> {
  return page.evaluate(
    async ([name, body]) => {
      const { bridge } = window as unknown as { bridge?: Bridge }
      if (bridge) return (bridge as (channel: unknown, request: unknown) => Promise<unknown>)(name, body)
      const response = await fetch(`/call/${String(name)}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(body),
      })
      return response.json()
    },
    [channel, request],
  )
}
