import { commands } from './commands'
import { runCommandLine } from './run'

/** Test support: runs one command line without a terminal, on the day of the fixtures. */
export async function runInMemory(args: readonly string[], home: string, standardInput = '') {
  let out = ''
  let error = ''
  const code = await runCommandLine(commands, args, {
    write: (text) => (out += text),
    writeError: (text) => (error += text),
    readStandardInput: () => Promise.resolve(standardInput),
    env: { POTWRIGHT_HOME: home },
    platform: 'linux',
    now: () => new Date('2026-12-05T10:00:00Z'),
  })
  return { code, out, error }
}
