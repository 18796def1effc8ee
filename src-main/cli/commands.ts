import { check } from './check'
import type { Command } from './command'
import { serve } from './serve'
import { tide } from './tide'
import { calc } from './calc'
import { verify } from './verify'
import { regions } from './regions'

/** Every command there is, in the order of the help. One file a command. */
export const commands: readonly Command[] = [check, tide, regions, calc, verify, serve]
