/*
 * The stations as they are shipped: two files made at build time from the tide database. Rows are arrays to keep
 * them small; texts that repeat (publisher, licence, zone) are kept once and referred to by number.
 */

export interface Origin {
  readonly publisher: string
  readonly attribution: string
  readonly licence: string
  readonly licenceUrl: string
}

/** Id, t(ide) or c(urrent), name, place, latitude, longitude, zone's number, 1 if subordinate, origin's number. */
export type StationRow = readonly [string, 't' | 'c', string, string, number, number, number, 0 | 1, number]

export interface StationIndex {
  readonly version: 1
  /** Version of the database that it was made from. */
  readonly database: string
  readonly origins: readonly Origin[]
  readonly zones: readonly string[]
  readonly stations: readonly StationRow[]
}

/** Number of the constituent's name, amplitude, phase; and so on. Amplitudes in metres or knots. */
type Flat = readonly number[]

export type TideRow = { datum: string; mean: number; recordsEnd?: number; sum: Flat }
export type TideOffsetRow = {
  reference: string
  datum: string
  mean: number
  minutes: readonly [high: number, low: number]
  kind: 'ratio' | 'fixed'
  heights: readonly [high: number, low: number]
}
/** Directions in degrees, mean flow in knots. */
export type CurrentRow = { flood?: number; ebb?: number; mean: number; sum: Flat }
/** Minutes for slack before flood, slack before ebb, flood, ebb; ratios for flood, ebb. */
export type CurrentOffsetRow = {
  reference: string
  flood?: number
  ebb?: number
  minutes: readonly [number, number, number, number]
  ratios: readonly [number, number]
}

export interface PackedConstants {
  readonly version: 1
  readonly names: readonly string[]
  readonly tides: Readonly<Record<string, TideRow>>
  readonly tideOffsets: Readonly<Record<string, TideOffsetRow>>
  readonly currents: Readonly<Record<string, CurrentRow>>
  readonly currentOffsets: Readonly<Record<string, CurrentOffsetRow>>
}

export interface PackedStations {
  readonly index: StationIndex
  readonly constants: PackedConstants
}
