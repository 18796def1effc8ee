import { StationLibrary } from './library'

let library: Promise<StationLibrary> | undefined

/** The stations that come with the program, opened on first need and kept. */
export function shippedStations(): Promise<StationLibrary> {
  library ??= open()
  return library
}

async function open(): Promise<StationLibrary> {
  const [index, constants] = await Promise.all([
    import('virtual:station-index'),
    import('virtual:station-constants'),
  ])
  return new StationLibrary(index.default, constants.default)
}
