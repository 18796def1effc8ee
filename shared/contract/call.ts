import * as v from 'valibot'

/** One thing that may be asked of the services: what goes in and what comes back. */
export const call = <Q extends v.GenericSchema, R extends v.GenericSchema>(request: Q, reply: R) => ({
  request,
  reply,
})

/** For requests and replies that carry nothing. */
export const nothing = v.strictObject({})

/**
 * Bytes in base64, up to so many letters. Looked at letter by letter: a pattern of groups of four, as schema libraries
 * have it, runs out of stack at a few megabytes.
 */
export const base64Text = (longest: number, message: string) =>
  v.pipe(
    v.string(),
    v.maxLength(longest),
    v.check((text) => text.length % 4 === 0 && /^[A-Za-z0-9+/]*={0,2}$/.test(text), message),
  )
