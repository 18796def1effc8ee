import { type Command, CommandRefused, type ExitCode, type Terminal } from './command'

/** Runs one command line and returns its exit code; nothing of a refused command is written. */
export async function runCommandLine(
  commands: readonly Command[],
  args: readonly string[],
  terminal: Terminal,
): Promise<ExitCode> {
  const [name = 'help', ...rest] = args
  if (name === 'help' || name === '--help' || name === '-h') {
    terminal.write(help(commands))
    return 0
  }
  const command = commands.find((known) => known.name === name)
  if (!command) {
    terminal.writeError(`There is no command “${name}”.\n\n${help(commands)}`)
    return 2
  }
  if (rest.includes('--help') || rest.includes('-h')) {
    terminal.write(`${command.does}\n\n${command.usage}\n`)
    return 0
  }
  try {
    return await command.run(rest, terminal)
  } catch (thrown) {
    if (!(thrown instanceof CommandRefused)) throw thrown
    const where = thrown.path === undefined ? '' : ` [${thrown.path}]`
    terminal.writeError(`potwright ${name}: ${thrown.message}${where}\n`)
    return 2
  }
}

function help(commands: readonly Command[]): string {
  const width = Math.max(...commands.map(({ name }) => name.length))
  const lines = commands.map(({ name, does }) => `  ${name.padEnd(width)}  ${does}`)
  return [
    'potwright: puts a crab pot together and says whether it is legal, holds and shows its float.',
    '',
    ...lines,
    '',
    'Files may be “-” for standard input. Most commands print JSON with --json.',
    'Exit codes: 0 all hold, 1 something fails, is close or cannot be told, 2 bad input.',
    '',
  ].join('\n')
}
