import { Ajv2020 } from 'ajv/dist/2020'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { jsonSchemaFiles } from '../.config/json-schemas'

/* The published schemas, judged by a validator that is not ours. */

const root = fileURLToPath(new URL('..', import.meta.url))
const folder = join(root, 'assets/schemas')
const read = (path: string): unknown => JSON.parse(readFileSync(join(root, path), 'utf8'))

test('the published schemas are those the program reads with; `npm run schemas` writes them', () => {
  const published = readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')])
  expect(Object.fromEntries(published)).toEqual(Object.fromEntries(jsonSchemaFiles()))
})

describe.each([...jsonSchemaFiles().keys()])('%s', (name) => {
  test('is a JSON Schema', () => {
    expect(validator().validateSchema(read(`assets/schemas/${name}`) as object)).toBe(true)
  })
})

describe.each([
  { schema: 'pot', folder: 'tests/fixtures', files: /^(?!broken).*\.pot\.json$/ },
  { schema: 'water', folder: 'tests/fixtures', files: /\.water\.json$/ },
  { schema: 'trip', folder: 'tests/fixtures', files: /\.trip\.json$/ },
  { schema: 'rule-pack', folder: 'assets/rules', files: /\.json$/ },
])('$schema', ({ schema, folder: where, files }) => {
  const validate = validator().compile(read(`assets/schemas/${schema}.schema.json`) as object)

  test.each(readdirSync(join(root, where)).filter((name) => files.test(name)))('takes %s', (name) => {
    validate(read(`${where}/${name}`))
    expect(validate.errors).toBeNull()
  })
})

test.each([
  'broken-negative-size.pot.json',
  'broken-newer-version.pot.json',
  'broken-text-for-number.pot.json',
  'broken-unknown-field.pot.json',
])('pot refuses %s', (name) => {
  const validate = validator().compile(read('assets/schemas/pot.schema.json') as object)
  expect(validate(read(`tests/fixtures/${name}`))).toBe(false)
})

/** Dates and addresses are left to the program: JSON Schema takes `format` as a remark unless told otherwise. */
function validator() {
  return new Ajv2020({ strict: true, strictTypes: false, validateFormats: false, allErrors: true })
}
