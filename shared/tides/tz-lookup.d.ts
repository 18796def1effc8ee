declare module 'tz-lookup' {
  /** IANA zone at a position. */
  export default function lookUpZone(latitude: number, longitude: number): string
}
