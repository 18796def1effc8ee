import { randomBytes, timingSafeEqual } from 'node:crypto'

/** What a request says about where it comes from. */
export interface Visitor {
  readonly method: string
  readonly host: string | undefined
  readonly origin: string | undefined
  /** `Sec-Fetch-Site`, which browsers send and pages cannot forge. */
  readonly site: string | undefined
  readonly cookie: string | undefined
}

export type Decision = 'let-in' | 'wrong-host' | 'wrong-origin' | 'no-cookie'

/**
 * The door of the browser edition. The address printed at the start carries a token that works once; it is
 * exchanged for a cookie that scripts cannot read and other sites cannot send.
 */
export class BrowserDoor {
  #token: string | undefined = secret()
  readonly #session = secret()

  get token(): string | undefined {
    return this.#token
  }

  /** The cookie for whoever shows the token; the token is spent with it. */
  enter(shown: string | null, address: string): string | undefined {
    if (shown === null || this.#token === undefined || !same(shown, this.#token)) return undefined
    this.#token = undefined
    return `${cookieName(address)}=${this.#session}; HttpOnly; SameSite=Strict; Path=/`
  }

  /** Whether a visitor may come in at `address`, as `127.0.0.1:4100`. */
  decide(visitor: Visitor, address: string): Decision {
    // A foreign page that points its own name at this machine still sends that name.
    if (visitor.host !== address) return 'wrong-host'
    const foreignSite =
      visitor.site !== undefined && visitor.site !== 'same-origin' && visitor.site !== 'none'
    const foreignOrigin = visitor.origin !== undefined && visitor.origin !== `http://${address}`
    if (foreignOrigin || (foreignSite && visitor.method !== 'GET')) return 'wrong-origin'
    const held = cookieValue(visitor.cookie ?? '', cookieName(address))
    return held !== undefined && same(held, this.#session) ? 'let-in' : 'no-cookie'
  }
}

const secret = () => randomBytes(32).toString('base64url')

/** Browsers keep one cookie for all ports of a machine; two editions side by side need two names. */
const cookieName = (address: string) => `potwright-${address.split(':')[1] ?? ''}`

function cookieValue(header: string, wanted: string): string | undefined {
  for (const pair of header.split(';')) {
    const [name, value] = pair.trim().split('=')
    if (name === wanted) return value
  }
  return undefined
}

function same(a: string, b: string): boolean {
  const [first, second] = [Buffer.from(a), Buffer.from(b)]
  return first.length === second.length && timingSafeEqual(first, second)
}
