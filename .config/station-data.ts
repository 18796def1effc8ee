import { createRequire } from 'node:module'
import type { Plugin } from 'vite'
import { packStations } from '../src-main/services/stations/pack'

/**
 * Offers the stations that may be shipped as two modules, `virtual:station-index` and `virtual:station-constants`,
 * made from the tide database when they are asked for. In the build each becomes a chunk of its own, read on
 * first need, and the database itself is left behind.
 */
export function stationData(): Plugin {
  const require = createRequire(import.meta.url)
  let packed: ReturnType<typeof packStations> | undefined
  return {
    name: 'station-data',
    resolveId: (id) => (id.startsWith(prefix) ? `\0${id}` : undefined),
    load(id) {
      if (!id.startsWith(`\0${prefix}`)) return undefined
      const { version } = require('@neaps/tide-database/package.json') as { version: string }
      packed ??= packStations(version)
      const part = id.endsWith('index') ? packed.index : packed.constants
      // A string to parse is read several times faster than the same data as code.
      return `export default JSON.parse(${JSON.stringify(JSON.stringify(part))})`
    },
  }
}

const prefix = 'virtual:station-'
