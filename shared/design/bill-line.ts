import type { PartName } from '@shared/schema/check'

/** One thing to buy or cut, with how much of it. */
export interface BillLine {
  readonly part: PartName
  /** What it is, for a person: "Base ring, galvanised steel 10 mm". */
  readonly what: string
  readonly quantity: number
  readonly unit: 'm' | 'm2' | 'piece' | 'kg'
  readonly massKg?: number
  /** Row of the materials by which a price is found. */
  readonly materialId: string
  readonly priceEach?: number
  readonly currency?: string
}

/** Length added to a cut for a lap, a knot or a splice [m]. Judgement. */
export const tieAllowanceM = 0.3
