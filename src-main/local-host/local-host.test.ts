import { mkdir, writeFile } from 'node:fs/promises'
import { request } from 'node:http'
import { join } from 'node:path'
import { afterEach, describe, expect, test, vi } from 'vitest'
import type { Services } from '@main/services/create-services'
import { openTestServices } from '@main/services/open-test-services'
import { samplePot } from '@main/storage/sample-pots'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { contentPolicy } from '@main/window/content-policy'
import { type LocalHost, startLocalHost } from './local-host'

const folder = temporaryFolder()
let host: LocalHost | undefined
let services: Services | undefined
const noteFault = vi.fn()
afterEach(async () => {
  await host?.close()
  services?.close()
  host = undefined
  noteFault.mockReset()
})

interface Answer {
  status: number
  headers: Record<string, string | string[] | undefined>
  body: string
}

/** A request as bare as a hostile program would send it: the path is not tidied up on the way. */
function ask(
  path: string,
  options: { method?: string; headers?: Record<string, string>; body?: string } = {},
) {
  const { port } = new URL(host?.address ?? '')
  return new Promise<Answer>((done, fail) => {
    const sent = request(
      { host: '127.0.0.1', port, path, method: options.method ?? 'GET', headers: options.headers ?? {} },
      (response) => {
        let body = ''
        response.on('data', (part: Buffer) => (body += part.toString()))
        response.on('end', () => done({ status: response.statusCode ?? 0, headers: response.headers, body }))
      },
    )
    sent.on('error', fail)
    sent.end(options.body)
  })
}

async function opened() {
  await mkdir(join(folder(), 'pages'))
  await writeFile(join(folder(), 'pages', 'index.html'), '<title>Potwright</title>')
  await writeFile(join(folder(), 'pages', '.hidden'), 'hidden')
  await writeFile(join(folder(), 'secret.txt'), 'secret')
  services = await openTestServices(join(folder(), 'data'))
  host = await startLocalHost({ services, pages: join(folder(), 'pages'), port: 0, noteFault })
  return host
}

/** Goes through the door and returns the cookie. */
async function entered(): Promise<string> {
  const { entrance } = await opened()
  const { headers } = await ask(new URL(entrance).pathname + new URL(entrance).search)
  return String(headers['set-cookie']).split(';')[0] ?? ''
}

const call = (cookie: string, channel: string, body: unknown, headers: Record<string, string> = {}) =>
  ask(`/call/${channel}`, {
    method: 'POST',
    headers: { cookie, 'content-type': 'application/json', ...headers },
    body: JSON.stringify(body),
  })

describe('the door', () => {
  test('takes the token once, for a cookie that scripts and other sites cannot use', async () => {
    const { entrance, address } = await opened()
    expect(new URL(address).hostname).toBe('127.0.0.1')
    const path = `/${new URL(entrance).search}`
    const first = await ask(path)
    expect(first.status).toBe(303)
    expect(first.headers['location']).toBe('/')
    expect(String(first.headers['set-cookie'])).toMatch(/HttpOnly; SameSite=Strict; Path=\/$/)
    expect((await ask(path)).status).toBe(403)
  })

  test.each(['/', '/?token=', '/?token=guessed', '/index.html', '/call/pots:list', '/notices'])(
    'lets nobody in without it: %s',
    async (path) => {
      await opened()
      expect(await ask(path)).toMatchObject({ status: 403 })
    },
  )

  test('a token on another page than the first opens nothing', async () => {
    const { entrance } = await opened()
    expect((await ask(`/index.html${new URL(entrance).search}`)).status).toBe(403)
    expect((await ask(`/${new URL(entrance).search}`)).status).toBe(303)
  })

  test.each([
    ['another host, as a foreign name pointed here has', { host: 'evil.example' }],
    ['localhost by another name', { host: 'localhost' }],
    ['another origin', { origin: 'https://evil.example' }],
    ['an origin on another port', { origin: 'http://127.0.0.1:1' }],
    ['an origin kept back', { origin: 'null' }],
    ['another site', { 'sec-fetch-site': 'cross-site' }],
    ['a neighbour on this machine', { 'sec-fetch-site': 'same-site' }],
    ['a false cookie', { cookie: 'potwright-1=abc' }],
  ])('refuses a call from %s', async (_, headers) => {
    const cookie = await entered()
    const { status, body } = await call(cookie, 'pots:list', {}, headers)
    expect(status).toBe(403)
    expect(JSON.parse(body)).toMatchObject({ ok: false, error: { code: 'unavailable' } })
  })
})

describe('pages', () => {
  test('come with the content policy', async () => {
    const cookie = await entered()
    const { status, headers, body } = await ask('/', { headers: { cookie } })
    expect(status).toBe(200)
    expect(body).toContain('Potwright')
    expect(headers['content-security-policy']).toBe(contentPolicy)
    expect(headers['x-content-type-options']).toBe('nosniff')
  })

  test.each([
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/%2e%2e%2fsecret.txt',
    '/..%5csecret.txt',
    '/a/../../secret.txt',
    '/.hidden',
    '/secret.txt',
    '/%00',
    '/%E0%A4%A',
  ])('%s leads nowhere', async (path) => {
    const cookie = await entered()
    const { status, body } = await ask(path, { headers: { cookie } })
    expect(status).toBeGreaterThanOrEqual(400)
    expect(body).not.toMatch(/secret\n?$|hidden/)
  })

  test('are only read', async () => {
    const cookie = await entered()
    expect((await ask('/index.html', { method: 'PUT', headers: { cookie } })).status).toBe(405)
  })
})

describe('calls', () => {
  test('are answered with a result', async () => {
    const cookie = await entered()
    expect(JSON.parse((await call(cookie, 'pots:save', { document: samplePot('a') })).body)).toMatchObject({
      ok: true,
      value: { document: { id: 'a' } },
    })
    expect(JSON.parse((await call(cookie, 'pots%3Alist', {})).body)).toMatchObject({ value: { items: [{}] } })
    expect(JSON.parse((await call(cookie, 'pots:burn', {})).body)).toMatchObject({
      error: { code: 'not_found' },
    })
  })

  test('are answered where a service throws, and what was thrown is noted', async () => {
    const cookie = await entered()
    const thrown = new TypeError('a bug')
    Object.assign(services?.handlers ?? {}, { 'pots:list': () => Promise.reject(thrown) })
    const { status, body } = await call(cookie, 'pots:list', {})
    expect(status).toBe(200)
    expect(JSON.parse(body)).toMatchObject({ ok: false, error: { code: 'unavailable' } })
    expect(noteFault).toHaveBeenCalledExactlyOnceWith(thrown)
  })

  test.each<[string, NonNullable<Parameters<typeof ask>[1]>, number]>([
    ['not posted', { method: 'GET' }, 405],
    ['not JSON by name', { method: 'POST', headers: { 'content-type': 'text/plain' }, body: '{}' }, 400],
    ['not JSON', { method: 'POST', headers: { 'content-type': 'application/json' }, body: '{' }, 400],
  ])('%s are refused', async (_, options, status) => {
    const cookie = await entered()
    const answer = await ask('/call/pots:list', { ...options, headers: { ...options.headers, cookie } })
    expect(answer.status).toBe(status)
    expect(JSON.parse(answer.body)).toMatchObject({ ok: false })
  })
})

/** What a page hears from now on. */
function listening(cookie: string, page: string) {
  const { port } = new URL(host?.address ?? '')
  const stream = { heard: '', ended: Promise.resolve() }
  stream.ended = new Promise<void>((done) => {
    request({ host: '127.0.0.1', port, path: `/notices?page=${page}`, headers: { cookie } }, (response) => {
      response.on('data', (part: Buffer) => (stream.heard += part.toString()))
      response.on('end', () => done())
    }).end()
  })
  return vi.waitFor(() => {
    expect(stream.heard).toContain(': listening')
    return stream
  })
}
const potsChanged = 'data: {"kind":"changed","subject":"pots"}\n\n'

test('notices arrive as they happen, and end with the host', async () => {
  const stream = await listening(await entered(), 'one')
  await writeFile(join(folder(), 'data', 'pots', 'z.pot.json'), JSON.stringify(samplePot('z')))
  await vi.waitFor(() => expect(stream.heard).toContain(potsChanged), 3000)
  await host?.close()
  await stream.ended
})

test('what one page saves is told to the others, and not to it', async () => {
  const cookie = await entered()
  const [one, other] = [await listening(cookie, 'one'), await listening(cookie, 'other')]
  const saved = await ask('/call/pots:save', {
    method: 'POST',
    headers: {
      cookie,
      host: new URL(host?.address ?? '').host,
      'content-type': 'application/json',
      'x-page': 'one',
    },
    body: JSON.stringify({ document: samplePot('a') }),
  })
  expect(JSON.parse(saved.body)).toMatchObject({ ok: true })
  await vi.waitFor(() => expect(other.heard).toContain(potsChanged), 3000)
  // A change that both hear of comes after it: until then the one had nothing.
  await writeFile(join(folder(), 'data', 'waters', 'z.water.json'), '{}')
  await vi.waitFor(() => expect(one.heard).toContain('"waters"'), 3000)
  expect(one.heard).not.toContain('"pots"')
  expect(other.heard.split(potsChanged)).toHaveLength(2)
})

test('a port that is taken is an error at the start', async () => {
  const first = await opened()
  const { port } = new URL(first.address)
  const second = startLocalHost({
    services: services as Services,
    pages: folder(),
    port: Number(port),
    noteFault,
  })
  await expect(second).rejects.toThrow(/EADDRINUSE/)
})
