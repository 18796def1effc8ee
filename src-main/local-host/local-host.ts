import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import sirv from 'sirv'
import { answerPage } from '@main/services/answer'
import { askingPage } from '@main/services/asking-page'
import type { Services } from '@main/services/create-services'
import { pageHeaders } from '@main/window/content-policy'
import { err } from '@shared/units/result'
import { BrowserDoor, type Decision } from './browser-door'
import { readBody } from './read-body'

export interface LocalHostOptions {
  readonly services: Services
  /** Folder of the built interface. */
  readonly pages: string
  /** 0 takes any free port. */
  readonly port: number
  /** Told of errors that are bugs. */
  readonly noteFault: (thrown: unknown) => void
}

export interface LocalHost {
  /** Address with its one-time token, to be opened by the user. */
  readonly entrance: string
  readonly address: string
  readonly close: () => Promise<void>
}

/** Serves the browser edition to this machine alone: pages, calls and notices behind one door. */
export async function startLocalHost(options: LocalHostOptions): Promise<LocalHost> {
  const { services, pages, port, noteFault } = options
  const door = new BrowserDoor()
  const files = sirv(pages, {
    etag: true,
    dotfiles: false,
    onNoMatch: (request, response) => refuse(request, response, 404, 'Not found.'),
  })
  const streams = new Set<ServerResponse>()

  const server = createServer((request, response) => {
    handle(request, response).catch((thrown: unknown) => {
      noteFault(thrown)
      refuse(request, response, 500, 'Something went wrong here.')
    })
  })
  await listen(server, port)
  const address = `127.0.0.1:${(server.address() as AddressInfo).port}`

  async function handle(request: IncomingMessage, response: ServerResponse): Promise<void> {
    for (const [name, value] of Object.entries(pageHeaders)) response.setHeader(name, value)
    const url = new URL(request.url ?? '/', `http://${address}`)
    const decision = door.decide(visitorOf(request), address)
    if (decision !== 'let-in') {
      const cookie =
        decision === 'no-cookie' &&
        request.method === 'GET' &&
        url.pathname === '/' &&
        door.enter(url.searchParams.get('token'), address)
      if (!cookie) return refuse(request, response, 403, refusals[decision])
      response.writeHead(303, { 'Set-Cookie': cookie, Location: '/', 'Cache-Control': 'no-store' }).end()
      return
    }
    if (url.pathname.startsWith('/call/')) return call(request, response, url.pathname.slice('/call/'.length))
    if (url.pathname === '/notices') return subscribe(response, url.searchParams.get('page'))
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return refuse(request, response, 405, 'Not possible.')
    files(request, response)
  }

  async function call(request: IncomingMessage, response: ServerResponse, channel: string): Promise<void> {
    if (request.method !== 'POST') return refuse(request, response, 405, 'Calls are posted.')
    const body = await readBody(request)
    if (!body.ok) return refuse(request, response, 400, body.error.message)
    const answer = () => answerPage(services.handlers, decodeURIComponent(channel), body.value, noteFault)
    const page = request.headers['x-page']
    const reply = await (typeof page === 'string' ? askingPage.run(page, answer) : answer())
    response.writeHead(200, { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' })
    response.end(JSON.stringify(reply))
  }

  function subscribe(response: ServerResponse, page: string | null): void {
    response.writeHead(200, { 'Content-Type': 'text/event-stream', 'Cache-Control': 'no-store' })
    response.write(': listening\n\n')
    streams.add(response)
    const stop = services.onNotice((notice, known) => {
      if (page === null || page !== known) response.write(`data: ${JSON.stringify(notice)}\n\n`)
    })
    response.on('close', () => {
      stop()
      streams.delete(response)
    })
  }

  return {
    address: `http://${address}/`,
    entrance: `http://${address}/?token=${door.token ?? ''}`,
    close: async () => {
      for (const stream of streams) stream.end()
      await new Promise<void>((done) => {
        server.close(() => done())
        server.closeIdleConnections()
      })
    },
  }
}

const refusals: Record<Exclude<Decision, 'let-in'>, string> = {
  'wrong-host': 'This address is not served here.',
  'wrong-origin': 'Calls from other sites are refused.',
  'no-cookie':
    'Open the address that was printed when Potwright started. It works once; start again for a new one.',
}

function visitorOf({ method = 'GET', headers }: IncomingMessage) {
  const one = (value: string | string[] | undefined) => (Array.isArray(value) ? value.join(',') : value)
  return {
    method,
    host: headers.host,
    origin: headers.origin,
    site: one(headers['sec-fetch-site']),
    cookie: headers.cookie,
  }
}

/** Refuses in words: a result for a call, a line of text for a page. */
function refuse(request: IncomingMessage, response: ServerResponse, status: number, message: string): void {
  if (response.headersSent) return void response.end()
  const isCall = request.url?.startsWith('/call/') ?? false
  response.writeHead(status, {
    'Content-Type': isCall ? 'application/json' : 'text/plain; charset=utf-8',
    'Cache-Control': 'no-store',
  })
  response.end(isCall ? JSON.stringify(err({ code: 'unavailable', message })) : `${message}\n`)
}

/** On this machine's own loop only, whatever networks it is on. */
function listen(server: Server, port: number): Promise<void> {
  return new Promise((done, fail) => {
    server.once('error', fail)
    server.listen({ port, host: '127.0.0.1', exclusive: true }, () => {
      server.off('error', fail)
      done()
    })
  })
}
