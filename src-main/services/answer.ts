import * as v from 'valibot'
import { contract, type Handlers, isChannel } from '@shared/contract/contract'
import { err, type Result } from '@shared/units/result'

/**
 * Answers one call from outside, whichever way it came: unknown channels and requests that do not fit are
 * refused before any service sees them.
 */
export async function answer(handlers: Handlers, channel: string, raw: unknown): Promise<Result<unknown>> {
  if (!isChannel(channel)) return err({ code: 'not_found', message: `There is nothing called ${channel}.` })
  const parsed = v.safeParse(contract[channel].request, raw)
  if (!parsed.success) {
    const [issue] = parsed.issues
    return err({
      code: 'invalid',
      message: `${issue.message}. Nothing was changed.`,
      path: v.getDotPath(issue) ?? '',
    })
  }
  // The request was parsed by this channel's own schema; the type system cannot follow a name known at run time.
  const handle = handlers[channel] as (request: unknown) => Promise<Result<unknown>>
  return handle(parsed.output)
}
