import type { InstalledPart } from '@shared/schema/gear'
import type { EventOf } from '@shared/schema/journal'
import type { Inspection, StoragePlace } from '@shared/wear/part-use'
import type { Odometer } from './odometer'

/** A part of an owned pot with what it has been through up to the last event of its pot. */
export interface PartState {
  readonly part: InstalledPart
  /** The pot it is on, or was on last. */
  pot: string
  status: 'fitted' | 'retired' | 'failed'
  removedAt?: string
  /** What it had been through before it came on this pot; all of it once it is off. */
  carried: Odometer
  /** What its pot had been through when it came on. */
  pot0: Odometer
  readonly inspections: RecordedInspection[]
}

interface RecordedInspection extends Inspection {
  readonly event: string
  readonly on: string
  readonly note?: string
}

export type PotStatus = 'ashore' | 'in-water' | 'lost' | 'retired'

export interface Catch {
  kept: number
  undersized: number
  female: number
  other: number
}

/** An owned pot: one instance of a design, known by the number on its float. */
export interface PotState {
  readonly id: string
  readonly number: string
  readonly design: string
  status: PotStatus
  readonly addedAt: string
  /** Time of the last change of place, from which days in and out of the water are counted. */
  sinceMs: number
  storage: StoragePlace
  run?: string
  water?: string | undefined
  temperatureC?: number | undefined
  bait?: string | undefined
  /** When a float that had been passed by was seen again. */
  seenAt?: string
  /** All that the pot has been through, up to `sinceMs`. */
  readonly been: Odometer
  /** Days in the water without two days of drying or a cleaning between. */
  wetDays: number
  /** All that came up in it, as written down. */
  readonly caught: Catch
  lastHaul?: HaulEntry
  readonly photos: {
    readonly file: string
    readonly event: string
    readonly part?: string
    readonly caption?: string
  }[]
  /** Parts on it now. */
  parts: string[]
}

export interface SetEntry {
  readonly pot: string
  readonly event: string
  readonly at: string
}

export interface HaulEntry extends SetEntry {
  readonly caught: Catch
  readonly baitLeft?: 'none' | 'some' | 'most'
  readonly damage: readonly string[]
}

/** A day's string of floats: in the order in which they were set. */
export interface RunState {
  readonly id: string
  readonly startedAt: string
  water?: string
  readonly sets: SetEntry[]
  readonly hauls: HaulEntry[]
}

export type ProblemCode =
  | 'unknown-pot'
  | 'unknown-part'
  | 'unknown-target'
  | 'pot-twice'
  | 'part-twice'
  | 'number-twice'
  | 'haul-not-set'
  | 'set-twice'
  | 'retired-pot'
  | 'in-the-future'
  | 'inspection-before-part'
  | 'bad-correction'
  | 'id-twice'

/** Something in the history that does not add up: what, and what was done about it. */
export interface JournalProblem {
  readonly code: ProblemCode
  readonly event: string
  readonly machine: string
  readonly seq: number
  readonly at: string
  readonly what: string
}

/** What the history comes to: plain data, the same for the same set of events. */
export interface LockerState {
  readonly pots: Record<string, PotState>
  readonly parts: Record<string, PartState>
  readonly runs: Record<string, RunState>
  readonly stock: Record<string, number>
  readonly prices: Record<string, Omit<EventOf<'price'>, 'version' | 'machine' | 'seq' | 'kind'>>
  /** Pots still in the water though one set after them in the same run has been hauled. */
  missing: string[]
  readonly problems: JournalProblem[]
}
