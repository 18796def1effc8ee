import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import { openLocalHost } from '@main/local-host/open-local-host'
import { homeFolder } from '@main/storage/home'
import { type Command, CommandRefused } from './command'
import { parseOptions } from './options'

/** A file of the build, from where the built command stands. */
const built = (path: string) => fileURLToPath(new URL(path, import.meta.url))

/** Serves the browser edition until it is interrupted. */
export const serve: Command = {
  name: 'serve',
  does: 'opens the browser edition on this machine',
  usage: 'potwright serve [--port N] [--data DIR]',
  async run(args, terminal) {
    const { values, positionals } = parseOptions(args, {
      port: { type: 'string' },
      data: { type: 'string' },
      json: { type: 'boolean' },
    })
    if (positionals.length > 0) throw new CommandRefused(`serve takes no ${positionals[0] ?? ''}`)
    const opened = await openLocalHost({
      home: homeFolder(terminal.env, terminal.platform),
      dataFolder: values.data,
      port: portFrom(values.port),
      pages: built('../renderer/'),
      licenceFiles: ['./licences.json', '../renderer/licences.json'].map(built),
      now: terminal.now,
    })
    if (!opened.ok) throw new CommandRefused(opened.error.message, opened.error.path)
    const { entrance, dataFolder } = opened.value
    terminal.write(
      values.json
        ? `${JSON.stringify({ entrance, dataFolder })}\n`
        : `Potwright is open at ${entrance}\nData folder: ${dataFolder}\nStop it with Ctrl+C.\n`,
    )
    await Promise.race([once(process, 'SIGINT'), once(process, 'SIGTERM')])
    await opened.value.close()
    return 0
  },
}

function portFrom(text: string | undefined): number {
  if (text === undefined) return 0
  const port = Number(text)
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new CommandRefused('the port must be a whole number up to 65535', 'port')
  return port
}
