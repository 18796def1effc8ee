import { expect, test } from 'vitest'
import { parsePack } from './pack'
import { packFiles } from './packs'

type Json = Record<string, unknown>
const base = () => structuredClone(packFiles.get('US-WA')) as Json & { rules: Json[] }

function refusal(change: (pack: Json & { rules: Json[] }) => void): {
  path: string | undefined
  message: string
} {
  const pack = base()
  change(pack)
  const read = parsePack(pack)
  if (read.ok) throw new Error('the pack was accepted')
  return { path: read.error.path, message: read.error.message }
}

const ruleAt = (pack: { rules: Json[] }, id: string): Json => {
  const rule = pack.rules.find((one) => one['id'] === id)
  if (!rule) throw new Error(`no rule ${id}`)
  return rule
}
const at = (id: string, path: string) => `rules.${base().rules.findIndex((one) => one['id'] === id)}.${path}`
const volume = 'US-WA:volume'

test('an unknown operator is refused with its path', () => {
  const { path } = refusal((pack) => {
    ruleAt(pack, volume)['check'] = { op: 'about', quantity: 'body.volume', value: 13, unit: 'ft3' }
  })
  expect(path).toBe(at(volume, 'check.op'))
})

test('an unknown quantity is refused with its path', () => {
  const { path, message } = refusal((pack) => {
    ruleAt(pack, volume)['check'] = { op: 'max', quantity: 'body.colour', value: 13, unit: 'ft3' }
  })
  expect(path).toBe(at(volume, 'check.quantity'))
  expect(message).toContain('is not a quantity that a rule may name')
})

test('a unit that does not measure the quantity is refused with its path', () => {
  const { path, message } = refusal((pack) => {
    ruleAt(pack, volume)['check'] = { op: 'max', quantity: 'body.volume', value: 13, unit: 'mm' }
  })
  expect(path).toBe(at(volume, 'check.unit'))
  expect(message).toContain('mm does not measure body.volume')
})

test('an impossible date and an impossible day of the year are refused', () => {
  expect(refusal((pack) => (ruleAt(pack, volume)['from'] = '2026-02-30')).path).toBe(at(volume, 'from'))
  expect(refusal((pack) => (pack['checkedOn'] = '2026-13-01')).path).toBe('checkedOn')
  const { path } = refusal((pack) => {
    ruleAt(pack, 'US-WA:season-coast')['check'] = { op: 'open', seasons: [{ from: '12-01', to: '09-31' }] }
  })
  expect(path).toBe(at('US-WA:season-coast', 'check.seasons.0.to'))
})

test('a rule that ends before it starts is refused', () => {
  const { path } = refusal((pack) => Object.assign(ruleAt(pack, volume), { from: '2026-05', to: '2025' }))
  expect(path).toBe(at(volume, 'to'))
})

test('an id used twice is refused, whichever kind of entry has it', () => {
  expect(refusal((pack) => (ruleAt(pack, volume)['id'] = 'US-WA:line')).message).toContain(
    'US-WA:line a second time',
  )
  expect(
    refusal((pack) => ((pack['notFound'] as Json[])[0] = { id: volume, what: 'x', subject: 'mesh' })).path,
  ).toBe('notFound.0.id')
})

test('a source or a zone that is not listed is refused', () => {
  expect(refusal((pack) => (ruleAt(pack, volume)['sources'] = [99])).path).toBe(at(volume, 'sources'))
  expect(refusal((pack) => (ruleAt(pack, volume)['sources'] = [])).path).toBe(at(volume, 'sources'))
  expect(refusal((pack) => (ruleAt(pack, volume)['applies'] = { zones: ['nowhere'] })).path).toBe(
    at(volume, 'zones'),
  )
})

test("an item's quantity outside a check of such items is refused", () => {
  const { path } = refusal((pack) => {
    ruleAt(pack, volume)['check'] = {
      op: 'every',
      of: 'gap',
      where: { op: 'max', quantity: 'entrance.width', value: 1, unit: 'm' },
    }
  })
  expect(path).toBe(at(volume, 'check.where.quantity'))
})

test('an operator that does not fit the kind of quantity is refused', () => {
  const { path } = refusal((pack) => {
    ruleAt(pack, volume)['check'] = { op: 'is', quantity: 'body.volume', value: true }
  })
  expect(path).toBe(at(volume, 'check.op'))
})

test('a rule with two ways, or none, of being told is refused', () => {
  expect(refusal((pack) => (ruleAt(pack, volume)['shown'] = 'Read it.')).message).toContain(
    'one of check, readings or shown',
  )
  expect(refusal((pack) => delete ruleAt(pack, volume)['check']).message).toContain(
    'one of check, readings or shown',
  )
})

test('a newer version is refused unread', () => {
  const read = parsePack({ ...base(), version: 2 })
  expect(read.ok ? '' : read.error.code).toBe('newer_version')
})

test('what is no pack at all is refused', () => {
  for (const raw of [null, 7, 'pack', [], {}]) expect(parsePack(raw).ok).toBe(false)
})
