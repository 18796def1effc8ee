import { temporaryPrefix } from './durable-write'
import { isSetAside } from './set-aside'

/** What the name of a file in a document folder says about it. */
export type FileRole =
  /** Where the document of this id belongs. */
  | { role: 'document'; id: string }
  /** A sync engine's or a person's copy; `label` is what they added to the name, for the user to recognise. */
  | { role: 'copy'; label: string }
  | { role: 'set-aside' }
  | { role: 'ignored' }

/**
 * Tells the role of a file from its name alone. Sync engines name what they could not merge in different ways:
 * `x (conflicted copy 2026-12-05).pot.json`, `x.sync-conflict-….pot.json`, `x-DESKTOP-7.pot.json`,
 * `x.pot (1).json`. The last-but-one looks like a document of its own; there the id inside decides.
 */
export function fileRole(fileName: string, suffix: string): FileRole {
  if (isSetAside(fileName)) return { role: 'set-aside' }
  if (fileName.startsWith('.') || fileName.startsWith(temporaryPrefix) || !fileName.endsWith('.json'))
    return { role: 'ignored' }
  const stem = fileName.slice(0, -'.json'.length)
  const kindMark = suffix.slice(0, -'.json'.length) // `.pot` of `.pot.json`
  if (fileName.endsWith(suffix)) {
    const id = fileName.slice(0, -suffix.length)
    return isPlainId(id) ? { role: 'document', id } : { role: 'copy', label: addition(id) }
  }
  return { role: 'copy', label: addition(stem.replace(kindMark, '')) }
}

const isPlainId = (text: string) => /^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/.test(text)

/** What follows the id in a copy's name, without the punctuation around it. */
function addition(stem: string): string {
  const rest = /^[A-Za-z0-9_-]+(.*)$/.exec(stem)?.[1] ?? stem
  return rest.replace(/^[\s.(~_-]+|[\s)]+$/g, '') || stem
}
