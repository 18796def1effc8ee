import type { WaterConstants } from '@shared/schema/station'
import { err, ok, type Result } from '@shared/units/result'
import type { StationLibrary } from './library'

/** Constants of the stations asked for; one that is not among those shipped is an error that names it. */
export function waterConstants(
  library: StationLibrary,
  ids: { tide?: string | undefined; current?: string | undefined },
): Result<WaterConstants> {
  const tide = ids.tide === undefined ? undefined : library.tideConstants(ids.tide)
  if (ids.tide !== undefined && !tide) return err(unknown('tide', ids.tide))
  const current = ids.current === undefined ? undefined : library.currentConstants(ids.current)
  if (ids.current !== undefined && !current) return err(unknown('current', ids.current))
  return ok({ ...(tide && { tide }), ...(current && { current }) })
}

const unknown = (kind: 'tide' | 'current', id: string) => ({
  code: 'not_found' as const,
  message: `There is no ${kind} station ${id} among those that come with Potwright. Nothing was predicted.`,
  path: `${kind}.id`,
})
