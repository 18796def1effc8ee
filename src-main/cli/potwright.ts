import { text } from 'node:stream/consumers'
import { commands } from './commands'
import { runCommandLine } from './run'

process.exitCode = await runCommandLine(commands, process.argv.slice(2), {
  write: (out) => process.stdout.write(out),
  writeError: (out) => process.stderr.write(out),
  readStandardInput: () => text(process.stdin),
  env: process.env,
  platform: process.platform,
  now: () => new Date(),
})
