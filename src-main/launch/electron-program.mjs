import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { quietly } from './build.mjs'

const longestFetchMs = 180_000

/** The desktop runtime's program file, or undefined where it was not fetched yet. */
export function electronProgram(root) {
  const folder = join(root, 'node_modules', 'electron')
  const named = join(folder, 'path.txt')
  if (!existsSync(named)) return undefined
  const program = join(folder, 'dist', readFileSync(named, 'utf8').trim())
  return existsSync(program) ? program : undefined
}

/** Fetches the desktop runtime once. Resolves to undefined, or to why it cannot be had. */
export async function fetchElectron(root, say) {
  const installer = join(root, 'node_modules', 'electron', 'install.js')
  if (!existsSync(installer)) return 'the packages are not installed'
  say('Fetching the desktop runtime, about 100 MB, once. Ctrl+C stops.')
  const { code, output } = await quietly(process.execPath, [installer], root, { timeoutMs: longestFetchMs })
  if (code === 0) return undefined
  return /fetch failed|ENOTFOUND|ECONN|EAI_AGAIN|ETIMEDOUT/.test(output)
    ? 'the place it is fetched from cannot be reached'
    : 'fetching it failed'
}
