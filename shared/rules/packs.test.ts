import { expect, test } from 'vitest'
import ruleIds from '../../tests/reference/rule-ids.json'
import { parsePack } from './pack'
import { packFiles } from './packs'

const regions = Object.entries(ruleIds)

test.each([...packFiles])('%s is read whole', (_, raw) => {
  const read = parsePack(raw)
  expect(read.ok ? '' : read.error.message).toBe('')
})

test.each(regions)('%s: every known fact is checked, shown or not found', (region, known) => {
  const read = parsePack(packFiles.get(region))
  if (!read.ok) throw new Error(read.error.message)
  const { rules, notFound, species } = read.value
  const carried = new Set([...rules, ...notFound, ...species].map((entry) => entry.id))
  expect([...known.rules, ...known.species].filter((id) => !carried.has(id))).toEqual([])
  expect(read.value.region).toBe(region)
})
