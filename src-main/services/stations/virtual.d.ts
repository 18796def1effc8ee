declare module 'virtual:station-index' {
  const index: import('./packed').StationIndex
  export default index
}

declare module 'virtual:station-constants' {
  const constants: import('./packed').PackedConstants
  export default constants
}
