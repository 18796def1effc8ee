import * as v from 'valibot'
import { contract, type Handlers, isChannel } from '@shared/contract/contract'
import { type AppError, err, type Result } from '@shared/units/result'

/**
 * Answers one call from outside, whichever way it came: unknown channels and requests that do not fit are
 * refused before any service sees them. What a service throws is a bug and is thrown on.
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

/** The same for a page, which must not wait for ever where a bug was met: it is noted, and answered all the same. */
export async function answerPage(
  handlers: Handlers,
  channel: string,
  raw: unknown,
  noteFault: (thrown: unknown) => void,
): Promise<Result<unknown>> {
  try {
    return await answer(handlers, channel, raw)
  } catch (thrown) {
    noteFault(thrown)
    return err(ourFault)
  }
}

const ourFault: AppError = {
  code: 'unavailable',
  message:
    'This could not be done, by a fault of Potwright itself. It was noted in crashes.log. Start Potwright again if it goes on.',
}
