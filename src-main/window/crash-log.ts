import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs'
import { join } from 'node:path'

const largestBytes = 512 * 1024

/**
 * Notes what went wrong in a file on this machine, and nowhere else. Synchronous, because the program may be
 * about to end; a log that cannot be written must not make it worse.
 */
export function noteCrash(home: string, at: Date, what: string, thrown: unknown): void {
  const detail = thrown instanceof Error ? (thrown.stack ?? thrown.message) : JSON.stringify(thrown)
  const path = join(home, 'crashes.log')
  try {
    mkdirSync(home, { recursive: true })
    if ((statSync(path, { throwIfNoEntry: false })?.size ?? 0) > largestBytes) renameSync(path, `${path}.old`)
    appendFileSync(path, `${at.toISOString()} ${what}\n${detail}\n\n`)
  } catch {
    process.stderr.write(`${what}\n${detail}\n`)
  }
}
