import { isCitedPage } from '@shared/rules/cited-hosts'
import { appOrigin } from './app-pages'

/** A frame as far as the decision needs it; Electron hands over null where the frame is gone. */
export interface CallingFrame {
  readonly url: string
  readonly parent: unknown
}

/** Whether a call comes from the program's own page, in the window itself and not in a frame of it. */
export function isOurTopFrame(frame: CallingFrame | null | undefined): boolean {
  return frame !== null && frame !== undefined && frame.parent === null && isOurPage(frame.url)
}

/** Whether a window may show this address: only pages of the program itself. */
export function isOurPage(address: string): boolean {
  if (!URL.canParse(address)) return false
  const { protocol, host, username, password, port } = new URL(address)
  return `${protocol}//${host}` === appOrigin && username === '' && password === '' && port === ''
}

/** What to do with an address that a page wants to go to: stay, or hand to the user's browser after asking. */
export type LinkDecision = 'refuse' | 'ask'

/**
 * Decides on a link to the outside. Only `https:` pages at their usual port, whose host is among those of the
 * sources the program itself cites, and nothing with a name or password in it.
 */
export function decideLink(address: string, citedHosts: ReadonlySet<string>): LinkDecision {
  return isCitedPage(address, citedHosts) ? 'ask' : 'refuse'
}

/** Nothing of the machine is asked for by the program, so nothing is granted. */
export const allowsPermission = (): boolean => false
