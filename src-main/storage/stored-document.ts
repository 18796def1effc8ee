import { createHash } from 'node:crypto'
import type { choices, problemKinds } from '@shared/contract/document-calls'

/** What every document that is kept a file each has. */
export interface KeptDocument {
  id: string
  name: string
}

export interface Stored<T> {
  document: T
  revision: string
  savedAt: string
  savedBy?: string
}

export type Choice = (typeof choices)[number]

export interface Problem<T> {
  id: string
  kind: (typeof problemKinds)[number]
  documentId?: string
  message: string
  other?: T
}

/** A fingerprint of a document's content: the same on every machine, whatever its file's spacing. */
export function revisionOf(document: unknown): string {
  return createHash('sha256')
    .update(JSON.stringify(sorted(document)))
    .digest('hex')
    .slice(0, 16)
}

/** The same value with the fields of every object in one order. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, sorted(inner)]),
  )
}
