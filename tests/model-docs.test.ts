import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { coefficientKeys, defaultCoefficients } from '@shared/physics/coefficients'
import { expect, test } from 'vitest'
import { modelDocs } from '../.config/model-docs'

const root = fileURLToPath(new URL('..', import.meta.url))
const docs = modelDocs(root)

test.each([...docs.keys()])('%s is what the code says; `npm run docs` writes it anew', (name) => {
  expect(readFileSync(join(root, 'assets/docs', name), 'utf8')).toBe(docs.get(name))
})

test('every coefficient stands in it with its source, and the models of the rope with theirs', () => {
  const text = docs.get('models.md') ?? ''
  for (const key of coefficientKeys) expect(text).toContain(defaultCoefficients[key].source.slice(0, 40))
  expect(text).toContain('shared/physics/line/')
  expect(text).toMatch(/\*\*solveLine\*\*|\*\*minimumRope\*\*/)
})
