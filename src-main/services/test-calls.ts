import * as v from 'valibot'
import { type Channel, contract, type Reply, type Request } from '@shared/contract/contract'
import { partBytes } from '@shared/contract/backup'
import { answer } from './answer'
import type { Services } from './create-services'

/* Test support: asks services as a page would, and holds every answer against the contract. */

export async function ask<C extends Channel>({ handlers }: Services, channel: C, request: Request<C>) {
  const reply = await answer(handlers, channel, JSON.parse(JSON.stringify(request)))
  if (reply.ok) v.assert(contract[channel].reply as v.GenericSchema, JSON.parse(JSON.stringify(reply.value)))
  return reply
}

/** The same where nothing is to go wrong. */
export async function got<C extends Channel>(
  from: Services,
  channel: C,
  request: Request<C>,
): Promise<Reply<C>> {
  const reply = await ask(from, channel, request)
  if (!reply.ok) throw new Error(`${channel}: ${reply.error.message}`)
  return reply.value as Reply<C>
}

/** The file with everything, read part by part. */
export async function exported(from: Services): Promise<Buffer> {
  const { transfer } = await got(from, 'backup:export', {})
  const parts: Buffer[] = []
  for (let last = false; !last;) {
    const part = await got(from, 'backup:export-part', { transfer })
    parts.push(Buffer.from(part.base64, 'base64'))
    last = part.last
  }
  return Buffer.concat(parts)
}

/** Hands a file over in parts of any size, and has it taken in. */
export async function bringIn(to: Services, file: Uint8Array, sizeOfPart = partBytes) {
  let transfer: string | undefined
  for (let at = 0; at < Math.max(1, file.length); at += sizeOfPart) {
    const base64 = Buffer.from(file.subarray(at, at + sizeOfPart)).toString('base64')
    transfer = (await got(to, 'backup:import-part', { ...(transfer ? { transfer } : {}), base64 })).transfer
  }
  return ask(to, 'backup:import', { transfer: transfer ?? '' })
}
