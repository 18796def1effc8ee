import type { IncomingMessage } from 'node:http'
import { err, ok, type Result } from '@shared/units/result'

// A photo is the largest thing that is sent at once; what is larger goes over in parts.
const largestBytes = 32 * 1024 * 1024

/** The JSON that was posted, or why it is none. */
export async function readBody(request: IncomingMessage): Promise<Result<unknown>> {
  if (!/^application\/json\b/.test(request.headers['content-type'] ?? ''))
    return err({ code: 'invalid', message: 'Calls are made in JSON.' })
  const parts: Buffer[] = []
  let size = 0
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length
    if (size > largestBytes) return err({ code: 'invalid', message: 'This is too large.' })
    parts.push(part)
  }
  try {
    return ok(JSON.parse(Buffer.concat(parts).toString('utf8')))
  } catch {
    return err({ code: 'invalid', message: 'This is not readable as JSON.' })
  }
}
