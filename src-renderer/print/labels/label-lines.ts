import type { LabelDemand, LabelPlace } from '@shared/rules/label-demands'
import type { Marks } from '@shared/schema/pot'
import { markFieldWords } from '@renderer/places/bench/parts/words'

export type MarkField = keyof typeof markFieldWords

/** Fields that stand on one line together, in this order; every other has a line of its own. */
const nameFields: readonly MarkField[] = ['first-name', 'initials', 'initial', 'last-name']

/**
 * The lines of one label: what the region asks for and nothing else, or the design's own words where it has some.
 *
 * @param filled what the reader typed for each field; one left empty stands as its name in brackets
 */
export function labelLines(
  place: LabelPlace,
  demand: LabelDemand,
  marks: Marks | undefined,
  filled: Readonly<Partial<Record<MarkField, string>>>,
): string[] {
  const own = marks?.[place]?.text.filter((line) => line.trim() !== '') ?? []
  if (own.length > 0) return own
  const say = (field: MarkField) => filled[field]?.trim() || `[${markFieldWords[field]}]`
  const name = nameFields.filter((field) => demand.fields.includes(field)).map(say)
  const others = demand.fields.filter((field) => !nameFields.includes(field)).map(say)
  return [...demand.texts, ...(name.length > 0 ? [name.join(' ')] : []), ...others]
}
