/** Models by the key of a published value: named inputs in, one number out. */
export type ModelRegistry = Record<string, (inputs: Record<string, unknown>) => number>

/**
 * Reads one input of a published value as a number.
 *
 * @throws {RangeError} the input is missing or not a finite number
 */
export function numberInput(inputs: Record<string, unknown>, key: string): number {
  const value = inputs[key]
  if (typeof value !== 'number' || !Number.isFinite(value))
    throw new RangeError(`${key} must be a number, got ${JSON.stringify(value)}`)
  return value
}
