import * as v from 'valibot'
import { err, ok, type Result } from '@shared/units/result'

/**
 * Reads an unknown value as a document of one schema.
 *
 * A newer `version` is refused unread; anything else that does not fit is refused with the path of the first
 * field in the way. Nothing is repaired or guessed.
 *
 * @param schema schema of the current version of the document
 * @param raw    what `JSON.parse` returned
 * @param what   the document's name in a sentence, as "pot design"
 * @returns the validated document, or an `invalid` or `newer_version` error that names the field
 */
export function readDocument<S extends v.GenericSchema>(
  schema: S,
  raw: unknown,
  what: string,
): Result<v.InferOutput<S>> {
  const known = knownVersion(schema)
  if (isObject(raw) && typeof raw['version'] === 'number' && known !== undefined && raw['version'] > known)
    return err({
      code: 'newer_version',
      message: `This ${what} was written by a newer Potwright (version ${raw['version']}, this one reads ${known}). It was not read or changed.`,
      path: 'version',
    })
  const parsed = v.safeParse(schema, raw, { abortPipeEarly: true })
  if (parsed.success) return ok(parsed.output)
  const [issue] = parsed.issues
  const path = v.getDotPath(issue) ?? ''
  return err({
    code: 'invalid',
    message: `This is not a ${what} that Potwright can use: ${path ? `${path} ` : ''}${sentence(issue)}. Nothing was changed.`,
    path,
  })
}

function knownVersion(schema: v.GenericSchema): number | undefined {
  const entries = (schema as { entries?: Record<string, { literal?: unknown }> }).entries
  const literal = entries?.['version']?.literal
  return typeof literal === 'number' ? literal : undefined
}

function sentence(issue: v.BaseIssue<unknown>): string {
  if (issue.type === 'strict_object' && issue.expected === 'never') return 'is not a field of this format'
  if (issue.received === 'undefined') return 'is missing'
  return /^(must|is) /.test(issue.message)
    ? issue.message
    : (kinds[issue.expected ?? ''] ?? `must be ${issue.expected ?? 'different'}, and is ${issue.received}`)
}

/** Kinds of value that a field may ask for, in words. */
const kinds: Readonly<Record<string, string>> = {
  number: 'must be a number',
  string: 'must be a text',
  boolean: 'must be yes or no (true or false)',
  Array: 'must be a list',
  Object: 'must be a group of fields',
}

function isObject(raw: unknown): raw is Record<string, unknown> {
  return typeof raw === 'object' && raw !== null
}
