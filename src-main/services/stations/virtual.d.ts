declare module 'virtual:station-index' {
  import type { StationIndex } from '@main/services/stations/packed'
  const index: StationIndex
  export default index
}

declare module 'virtual:station-constants' {
  import type { PackedConstants } from '@main/services/stations/packed'
  const constants: PackedConstants
  export default constants
}
