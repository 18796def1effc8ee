import * as v from 'valibot'
import { type JournalEvent, parseEvent } from '@shared/schema/journal'

/** A line that stops the reading of a journal file: where it stands and what is wrong with it. */
export interface BadLine {
  readonly line: number
  readonly message: string
  readonly newer: boolean
}

export interface JournalLines {
  readonly events: JournalEvent[]
  /** Bytes that hold whole events; what follows is a line that was cut off while being written. */
  readonly wholeBytes: number
  readonly tail: 'none' | 'torn' | 'unended'
  readonly bad: BadLine | undefined
}

/**
 * Reads one journal file. A last line without its end was never acknowledged to anyone: if it is not whole it is
 * torn off. Any other line that cannot be read stops the reading; what came before is returned.
 */
export function readJournalLines(file: Buffer): JournalLines {
  const events: JournalEvent[] = []
  const wholeBytes = file.lastIndexOf('\n') + 1
  const lines = wholeBytes === 0 ? [] : file.toString('utf8', 0, wholeBytes - 1).split('\n')
  for (const [index, line] of lines.entries()) {
    const read = readLine(line)
    if ('event' in read) events.push(read.event)
    else return { events, wholeBytes, tail: 'none', bad: { line: index + 1, ...read } }
  }
  if (wholeBytes === file.length) return { events, wholeBytes, tail: 'none', bad: undefined }
  const last = readLine(file.toString('utf8', wholeBytes))
  if (!('event' in last)) return { events, wholeBytes, tail: 'torn', bad: undefined }
  events.push(last.event)
  return { events, wholeBytes: file.length, tail: 'unended', bad: undefined }
}

function readLine(line: string): { event: JournalEvent } | { message: string; newer: boolean } {
  let raw: unknown
  try {
    raw = JSON.parse(line)
  } catch {
    return { message: 'it is not readable', newer: false }
  }
  const parsed = parseEvent(raw)
  if (parsed.success) return { event: parsed.output }
  const [issue] = parsed.issues
  return { message: `${v.getDotPath(issue) ?? 'it'}: ${issue.message}`, newer: isNewer(raw) }
}

function isNewer(raw: unknown): boolean {
  return (
    typeof raw === 'object' &&
    raw !== null &&
    'version' in raw &&
    typeof raw.version === 'number' &&
    raw.version > 1
  )
}
