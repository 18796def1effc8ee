import { openData } from '@main/services/open-data'
import { readShippedAhead } from '@main/services/packs-in-use'
import { readLicences } from '@main/services/read-licences'
import { errnoCode } from '@main/storage/storage-fault'
import { version } from '@main/version'
import { noteCrash } from '@main/window/crash-log'
import { err, ok, type Result } from '@shared/units/result'
import { type LocalHost, startLocalHost } from './local-host'

export interface BrowserEditionOptions {
  readonly home: string
  readonly dataFolder: string | undefined
  readonly port: number
  readonly pages: string
  readonly licenceFiles: readonly string[]
  readonly now: () => Date
}

/** Opens the data folder and serves the browser edition on it. */
export async function openLocalHost(
  options: BrowserEditionOptions,
): Promise<Result<LocalHost & { dataFolder: string }>> {
  const data = await openData({
    home: options.home,
    dataFolder: options.dataFolder,
    now: options.now,
    host: {
      edition: 'browser',
      version,
      runtime: { Node: process.versions.node },
      licences: () => readLicences(options.licenceFiles),
      showMenu: () => undefined,
      flushed: () => undefined,
    },
  })
  if (!data.ok) return data
  const { services, dataFolder } = data.value
  const noteFault = (thrown: unknown) => noteCrash(options.home, options.now(), 'A call failed.', thrown)
  const { pages, port } = options
  const host = await startLocalHost({ services, pages, port, noteFault }).catch(async (thrown: unknown) => {
    await data.value.close()
    if (errnoCode(thrown) === 'EADDRINUSE' || errnoCode(thrown) === 'EACCES') return undefined
    throw thrown
  })
  if (!host)
    return err({
      code: 'unavailable',
      message: `Port ${options.port} cannot be used: another program has it. Name another, or none.`,
      path: 'port',
    })
  readShippedAhead()
  return ok({
    ...host,
    dataFolder,
    close: async () => {
      await host.close()
      await data.value.close()
    },
  })
}
