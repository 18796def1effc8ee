import type { Bottom } from '@shared/schema/water'
import { gripCoefficients } from './coefficients/grip'
import { haulingCoefficients } from './coefficients/hauling'
import { potDragCoefficients } from './coefficients/pot-drag'
import { ropeAndFloatCoefficients } from './coefficients/rope-and-float'
import type { Coefficient } from './coefficients/row'

export type { Coefficient } from './coefficients/row'

const rows = {
  ...gripCoefficients,
  ...potDragCoefficients,
  ...ropeAndFloatCoefficients,
  ...haulingCoefficients,
} as const

export type CoefficientKey = keyof typeof rows

/** Every adjustable coefficient with its spread, range and source. */
export type Coefficients = Readonly<Record<CoefficientKey, Coefficient>>

/** One value for each coefficient, as a single run of the models uses them. */
export type CoefficientSet = Readonly<Record<CoefficientKey, number>>

export const defaultCoefficients: Coefficients = rows

export const coefficientKeys = Object.keys(rows) as readonly CoefficientKey[]

export const outlooks = ['cautious', 'middle', 'hopeful'] as const
export type Outlook = (typeof outlooks)[number]

/**
 * One value for each coefficient: the worse end of every spread, the middle, or the better end.
 *
 * @param sheet   coefficients with their spreads
 * @param outlook `cautious` takes the end that makes the verdict worse, `hopeful` the other one
 * @returns plain numbers in the unit of each coefficient
 */
export function coefficientSet(sheet: Coefficients, outlook: Outlook): CoefficientSet {
  const set = {} as Record<CoefficientKey, number>
  for (const key of coefficientKeys) set[key] = valueFor(sheet[key], outlook)
  return set
}

function valueFor(row: Coefficient, outlook: Outlook): number {
  if (outlook === 'middle') return row.mid
  return (outlook === 'cautious') === (row.cautious === 'low') ? row.low : row.high
}

/** What a user changed: any of the three values of any coefficient. */
export type CoefficientChanges = Readonly<
  Partial<Record<CoefficientKey, Partial<Pick<Coefficient, 'low' | 'mid' | 'high'>>>>
>

/**
 * A sheet with a user's own values in place of the defaults.
 *
 * Values are held within the row's range and put in order, so that low <= mid <= high.
 *
 * @param changes the user's values; what is left out keeps its default
 * @returns a full sheet
 */
export function coefficientsWith(changes: CoefficientChanges): Coefficients {
  const sheet = { ...rows } as Record<CoefficientKey, Coefficient>
  for (const key of coefficientKeys) {
    const own = changes[key]
    if (own) sheet[key] = inOrder({ ...rows[key], ...own })
  }
  return sheet
}

function inOrder(row: Coefficient): Coefficient {
  const [least, most] = row.range
  const within = (x: number) => Math.min(most, Math.max(least, x))
  const mid = within(row.mid)
  return { ...row, low: Math.min(within(row.low), mid), mid, high: Math.max(within(row.high), mid) }
}

const frictionKeys: Readonly<Record<Bottom, CoefficientKey>> = {
  mud: 'frictionMud',
  silt: 'frictionSilt',
  'silty-sand': 'frictionSiltySand',
  sand: 'frictionSand',
  'rippled-sand': 'frictionRippledSand',
  gravel: 'frictionGravel',
  rock: 'frictionRock',
}

/** Grip (largest horizontal force over ground reaction) of a pot on a bottom [-]. */
export function frictionOn(bottom: Bottom, set: CoefficientSet): number {
  return set[frictionKeys[bottom]]
}

/** Share of the tipping arm left on a bottom [-]: below 1 where the edge sinks in. */
export function edgeArmLeft(bottom: Bottom, set: CoefficientSet): number {
  return bottom === 'mud' || bottom === 'silt' ? set.softEdgeArm : 1
}
