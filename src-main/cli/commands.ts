import type { Command } from './command'
import { serve } from './serve'
import { tide } from './tide'

/** Every command there is, in the order of the help. One file a command. */
export const commands: readonly Command[] = [tide, serve]
