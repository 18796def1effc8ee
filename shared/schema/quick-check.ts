import type * as v from 'valibot'

/** Whether a value fits a schema as it stands, without being changed by it. */
export type QuickCheck = (value: unknown) => boolean

type Step = v.GenericSchema | v.PipeItem<unknown, unknown, v.BaseIssue<unknown>>

/**
 * Makes one fast test out of a schema, for lines that are read by the hundred thousand. A value that passes fits
 * the schema and comes out of it unchanged; one that does not pass is to be parsed with the schema itself, which
 * also says what is wrong.
 *
 * @param schema made of strings, numbers, literals, picklists, optionals, lists and strict objects
 * @returns the test; for parts it does not know, one that passes nothing
 */
export function quickCheck(schema: v.GenericSchema): QuickCheck {
  const pipe = (schema as { pipe?: readonly Step[] }).pipe
  if (!pipe) return checkOf(schema)
  const [root, ...rest] = pipe
  const checks = [root === undefined ? never : checkOf(root), ...rest.map(checkOf)]
  return (value) => {
    for (const check of checks) if (!check(value)) return false
    return true
  }
}

const never: QuickCheck = () => false

/** What the kinds of steps carry, by valibot's own names. */
interface Carried {
  readonly type: string
  readonly requirement?: unknown
  readonly literal?: unknown
  readonly options?: readonly unknown[]
  readonly wrapped?: v.GenericSchema
  readonly item?: v.GenericSchema
  readonly entries?: Readonly<Record<string, v.GenericSchema>>
}

function checkOf(step: Step): QuickCheck {
  const { type, requirement, literal, options, wrapped, item, entries } = step as Carried
  switch (type) {
    case 'string':
      return (value) => typeof value === 'string'
    case 'number':
      return (value) => typeof value === 'number' && !Number.isNaN(value)
    case 'literal':
      return (value) => value === literal
    case 'picklist':
      return (value) => options?.includes(value) ?? false
    case 'optional': {
      const inner = wrapped ? quickCheck(wrapped) : never
      return (value) => value === undefined || inner(value)
    }
    case 'array': {
      const each = item ? quickCheck(item) : never
      return (value) => Array.isArray(value) && value.every(each)
    }
    case 'strict_object':
      return entries ? objectCheck(entries) : never
    case 'regex':
    case 'iso_date':
      return requirement instanceof RegExp ? (value) => requirement.test(value as string) : never
    case 'trim':
      return (value) => (value as string).trim() === value
    case 'integer':
      return (value) => Number.isInteger(value)
    case 'finite':
      return (value) => Number.isFinite(value)
    case 'min_value':
      return (value) => (value as number) >= (requirement as number)
    case 'max_value':
      return (value) => (value as number) <= (requirement as number)
    case 'min_length':
      return (value) => (value as string).length >= (requirement as number)
    case 'max_length':
      return (value) => (value as string).length <= (requirement as number)
    case 'check':
      return requirement as QuickCheck
    default:
      return never
  }
}

function objectCheck(entries: Readonly<Record<string, v.GenericSchema>>): QuickCheck {
  const fields = new Map(
    Object.entries(entries).map(([key, schema]) => [
      key,
      { check: quickCheck(schema), required: schema.type !== 'optional' },
    ]),
  )
  const needed = [...fields.values()].filter(({ required }) => required).length
  return (value) => {
    if (typeof value !== 'object' || value === null) return false
    let met = 0
    for (const key in value) {
      const field = fields.get(key)
      if (!field?.check((value as Record<string, unknown>)[key])) return false
      if (field.required) met++
    }
    return met === needed
  }
}
