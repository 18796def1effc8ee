import * as v from 'valibot'

/*
 * Check vectors: one model, one set of inputs, one expected number. A vector is `published` when the expected number
 * itself comes from the named source, and `recomputed` when it only repeats the formula.
 */

const finite = v.pipe(v.number(), v.finite())

const vector = v.object({
  id: v.string(),
  model: v.string(),
  inputs: v.record(v.string(), v.unknown()),
  expected: finite,
  /** Absolute, in `unit`; 0 asks for the exact number. */
  tolerance: v.pipe(finite, v.minValue(0)),
  topic: v.optional(v.string()),
  quantity: v.optional(v.string()),
  unit: v.optional(v.string()),
  source: v.optional(v.string()),
  confidence: v.optional(v.string()),
  kind: v.optional(v.picklist(['published', 'recomputed'])),
})

const wrapped = v.object({
  title: v.optional(v.string()),
  note: v.optional(v.string()),
  vectors: v.array(vector),
})

/** A file of vectors: a bare list, or a list with a title and a note. */
export const VectorFileSchema = v.union([v.array(vector), wrapped])

export type Vector = v.InferOutput<typeof vector>
export type VectorFile = v.InferOutput<typeof VectorFileSchema>

export type ModelInputs = Readonly<Record<string, unknown>>

/** A model by its key: takes the inputs of a vector, gives one number, throws `RangeError` on inputs it cannot use. */
export type ModelRegistry = Readonly<Record<string, (inputs: ModelInputs) => number>>

/**
 * Reads one input of a vector as a number.
 *
 * @throws {RangeError} the input is missing or not a finite number
 */
export function numberInput(inputs: ModelInputs, key: string): number {
  const value = inputs[key]
  if (typeof value !== 'number' || !Number.isFinite(value))
    throw new RangeError(`${key} must be a number, got ${JSON.stringify(value)}`)
  return value
}

/**
 * Reads one input of a vector as a text.
 *
 * @throws {RangeError} the input is missing or not a text
 */
export function textInput(inputs: ModelInputs, key: string): string {
  const value = inputs[key]
  if (typeof value !== 'string') throw new RangeError(`${key} must be a text, got ${JSON.stringify(value)}`)
  return value
}

/** The vectors of either form of file. */
export function vectorsOf(file: VectorFile): readonly Vector[] {
  return Array.isArray(file) ? file : file.vectors
}
