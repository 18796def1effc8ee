import type { BagLimit } from '@shared/schema/rule-species'

/** What a measure of a container may mean, and what that holds. */
export interface ContainerMeasure {
  /** Undefined where the name of the unit leaves nothing open. */
  readonly kind?: 'dry' | 'liquid'
  readonly litres: number
}

/** Litres in a cubic inch, exact. */
const CUBIC_INCH_L = 0.016387064

const bushel: ContainerMeasure = { litres: 2150.42 * CUBIC_INCH_L }
const dryGallon: ContainerMeasure = { kind: 'dry', litres: 268.8025 * CUBIC_INCH_L }
const liquidGallon: ContainerMeasure = { kind: 'liquid', litres: 231 * CUBIC_INCH_L }

/**
 * What a limit by the container holds, in litres: how much room, never how many crabs.
 *
 * The bushel and the gallons of the United States are not those of other countries, so nothing is said elsewhere. A
 * gallon there is dry or liquid, and rules seldom say which: both come back, and it is not for us to choose.
 *
 * @param bag    a limit; its value ≥ 0
 * @param region code of the region whose limit it is, as `US-MD`
 * @returns every measure that may be meant [L]; none for other units, other countries and limits without a value
 * @source NIST Handbook 44, Appendix C: bushel 2150.42 in³, liquid gallon 231 in³; a dry gallon is an eighth of the
 *   bushel; NIST SP 811, Appendix B.8
 */
export function containerMeasures(
  { unit, value }: Pick<BagLimit, 'unit' | 'value'>,
  region: string,
): readonly ContainerMeasure[] {
  if (value === undefined || !/^US(-|$)/.test(region)) return []
  const meant =
    unit === 'bushel'
      ? [bushel]
      : unit === 'gallon' || unit === 'gallon-claws'
        ? [dryGallon, liquidGallon]
        : []
  return meant.map((one) => ({ ...one, litres: one.litres * value }))
}
