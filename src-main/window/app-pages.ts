import { readFile } from 'node:fs/promises'
import { extname, resolve } from 'node:path'
import { isInside } from '@main/storage/inside'
import { pageHeaders } from './content-policy'

/** Where the interface lives inside the desktop program. */
export const appOrigin = 'app://main'
export const appStart = `${appOrigin}/index.html`

/** The file that an address of the program stands for, or undefined where it is outside the folder or elsewhere. */
export function pageFile(address: string, folder: string): string | undefined {
  const url = parse(address)
  if (!url || url.protocol !== 'app:' || url.host !== 'main') return undefined
  const path = decoded(url.pathname)
  // A NUL ends a path early in some systems; a back slash is a separator in others.
  if (path === undefined || path.includes('\0') || path.includes('\\')) return undefined
  const file = resolve(folder, `.${path === '/' ? '/index.html' : path}`)
  return isInside(folder, file) ? file : undefined
}

/** Answers one request of the program's own protocol. */
export async function servePage(address: string, folder: string): Promise<Response> {
  const file = pageFile(address, folder)
  const content = file === undefined ? undefined : await readFile(file).catch(() => undefined) // missing and unreadable are both 404
  if (file === undefined || content === undefined)
    return new Response('Not found.', { status: 404, headers: pageHeaders })
  const type = contentTypes[extname(file)] ?? 'application/octet-stream'
  return new Response(new Uint8Array(content), { headers: { ...pageHeaders, 'Content-Type': type } })
}

const contentTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
}

function parse(address: string): URL | undefined {
  return URL.canParse(address) ? new URL(address) : undefined
}

function decoded(path: string): string | undefined {
  try {
    return decodeURIComponent(path)
  } catch {
    return undefined
  }
}
