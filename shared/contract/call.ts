import * as v from 'valibot'

/** One thing that may be asked of the services: what goes in and what comes back. */
export const call = <Q extends v.GenericSchema, R extends v.GenericSchema>(request: Q, reply: R) => ({
  request,
  reply,
})

/** For requests and replies that carry nothing. */
export const nothing = v.strictObject({})
