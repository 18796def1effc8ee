import type * as v from 'valibot'
import type { Result } from '@shared/units/result'
import { app } from './app'
import { backup } from './backup'
import { demo } from './demo'
import { journal } from './journal'
import { locker, photos } from './locker'
import { materials } from './materials'
import { packs } from './packs'
import { pots } from './pots'
import { printing } from './printing'
import { settings } from './settings'
import { stations } from './stations'
import { waters } from './waters'

/** Everything that the interface may ask of the services, however it reaches them. Nothing else gets through. */
export const contract = {
  ...pots,
  ...waters,
  ...stations,
  ...journal,
  ...locker,
  ...photos,
  ...materials,
  ...packs,
  ...settings,
  ...backup,
  ...printing,
  ...demo,
  ...app,
} as const

type Contract = typeof contract
export type Channel = keyof Contract
export type Request<C extends Channel> = v.InferOutput<Contract[C]['request']>
export type Reply<C extends Channel> = v.InferOutput<Contract[C]['reply']>

type Handler<C extends Channel> = (request: Request<C>) => Promise<Result<Reply<C>>>
export type Handlers<C extends Channel = Channel> = { readonly [K in C]: Handler<K> }

/** Names of the channels of one subject, as `Subject<'pots'>`. */
export type Subject<N extends string> = Extract<Channel, `${N}:${string}`>

export const isChannel = (name: string): name is Channel => Object.hasOwn(contract, name)
