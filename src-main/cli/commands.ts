import { check } from './check'
import type { Command } from './command'
import { serve } from './serve'
import { match } from './match'
import { tide } from './tide'
import { due } from './due'
import { calc } from './calc'
import { verify } from './verify'
import { regions } from './regions'

/** Every command there is, in the order of the help. One file a command. */
export const commands: readonly Command[] = [check, match, tide, due, regions, calc, verify, serve]
