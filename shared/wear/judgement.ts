import type { DecimalMark } from '@shared/units/locale'
import type { WearAssumptions } from './assumptions'
import type { LifeBelief } from './own-record'
import type { Remaining } from './strength-belief'

export type Decision = 'fine' | 'watch' | 'replace'

/** What the models say of one part. */
export interface PartLife {
  readonly decision: Decision
  /** One sentence: why. */
  readonly reason: string
  /** Months of use like that so far: median and 80 % range. Absent where nothing can be said. */
  readonly remainingMonths?: Remaining
  /** Share of the new strength left, for fibre parts. */
  readonly strengthLeft?: Remaining
  /** Chance that it fails or is too weak by the end of the time looked ahead, 0-1. */
  readonly failureChance?: number
  /** Whether an inspection stands behind it. */
  readonly inspected: boolean
}

/** The broken bars in a row at which netting is mended, before a legal crab gets out. */
export interface MendAt {
  /** What the crab is called. */
  readonly crab: string
  readonly bars: number
  /** Broken bars in a row through which it gets out. */
  readonly letOutAt: number
}

/** What else the judgement of a part depends on. */
export interface LifeContext {
  readonly sheet: WearAssumptions
  /** Months ahead that must be lasted, as the rest of a season. */
  readonly aheadMonths: number
  /** Water temperature where the pot is used [°C]. */
  readonly waterC?: number
  /** Share of its strength that a rope must keep, from its load; half where that is not known. */
  readonly requiredShare?: number
  /** When broken bars are mended, from the crab and the mesh; a usual crab and mesh where these are not known. */
  readonly mendAt?: MendAt
  /** Belief on lives of this kind, the user's own record included, in its usual unit. */
  readonly belief?: LifeBelief
  /** How many of the user's own parts like it failed; without a failure the record moves nothing. */
  readonly ownFailures?: number
  /** Of the sentences; a full stop unless said. */
  readonly decimalMark?: DecimalMark
}
