import { readFile, stat } from 'node:fs/promises'
import { basename, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Notice } from '@shared/contract/bridge'

const largestBytes = 4_000_000

/**
 * The documents among the arguments the program was started with: what was double-clicked. Desktops hand over
 * addresses (`file://…`), a command line names from the folder it stands in.
 */
export function documentsIn(args: readonly string[], folder: string): string[] {
  return args
    .slice(1)
    .filter((arg) => /\.(pot|water)\.json$/i.test(arg) && !arg.startsWith('-'))
    .flatMap((arg) => (arg.startsWith('file:') ? pathOf(arg) : resolve(folder, arg)))
}

/** Nothing where the address names no file of this machine. */
function pathOf(address: string): string | [] {
  try {
    return fileURLToPath(address)
  } catch {
    return []
  }
}

/** A file opened from outside, for the page to import; undefined where it cannot be read as a small text. */
export async function openedNotice(path: string): Promise<Extract<Notice, { kind: 'opened' }> | undefined> {
  const found = await stat(path).catch(() => undefined)
  if (!found?.isFile() || found.size > largestBytes) return undefined
  const text = await readFile(path, 'utf8').catch(() => undefined)
  return text === undefined ? undefined : { kind: 'opened', fileName: basename(path), text }
}
