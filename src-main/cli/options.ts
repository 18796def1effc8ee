import { parseArgs, type ParseArgsConfig } from 'node:util'
import { CommandRefused } from './command'

/** Reads the arguments of one command; what it does not know is refused by name. */
export function parseOptions<O extends NonNullable<ParseArgsConfig['options']>>(
  args: readonly string[],
  options: O,
) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true })
  } catch (thrown) {
    // parseArgs throws a TypeError with a readable first sentence for every misuse.
    if (thrown instanceof TypeError) throw new CommandRefused(thrown.message.split('. ')[0] ?? thrown.message)
    throw thrown
  }
}
