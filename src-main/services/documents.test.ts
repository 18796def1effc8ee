import { describe, expect, test } from 'vitest'
import { failing } from '@main/storage/failing-disk'
import { samplePot } from '@main/storage/sample-pots'
import { servicesInTests } from './services-in-tests'
import { ask, got } from './test-calls'

const { services } = servicesInTests()

describe('pots', () => {
  test('are saved, listed by name, found, removed and taken back', async () => {
    const open = await services()
    await got(open, 'pots:save', { document: samplePot('b', { name: 'Aft' }) })
    const { revision } = await got(open, 'pots:save', { document: samplePot('a', { name: 'Bow' }) })
    const { items, problems } = await got(open, 'pots:list', {})
    expect(items.map(({ document }) => document.name)).toEqual(['Aft', 'Bow'])
    expect(problems).toEqual([])
    await got(open, 'pots:delete', { id: 'a', revision })
    expect(await ask(open, 'pots:get', { id: 'a' })).toMatchObject({ error: { code: 'not_found' } })
    expect(await got(open, 'pots:restore', { id: 'a' })).toMatchObject({ document: { name: 'Bow' } })
  })

  test('go out as a file and come in again as they were', async () => {
    const open = await services()
    await got(open, 'pots:save', { document: samplePot('a', { name: 'Môle/No. 7 ' }) })
    const { fileName, text } = await got(open, 'pots:export', { id: 'a' })
    expect(fileName).toBe('MoleNo-7.pot.json')
    expect(await got(open, 'pots:import', { text })).toMatchObject({ outcome: 'same' })
    await got(open, 'pots:delete', { id: 'a' })
    expect(await got(open, 'pots:import', { text })).toMatchObject({
      outcome: 'added',
      stored: { document: { id: 'a' } },
    })
  })

  test('that are here already and differ: refused, kept beside, or replaced', async () => {
    const open = await services()
    await got(open, 'pots:save', { document: samplePot('a') })
    const text = JSON.stringify(samplePot('a', { name: 'Other' }))
    expect(await ask(open, 'pots:import', { text })).toMatchObject({ error: { code: 'conflict' } })
    expect(await got(open, 'pots:import', { text, ifExists: 'keep-both' })).toMatchObject({
      outcome: 'added',
      stored: { document: { name: 'Other', id: 'new-shed-1' } },
    })
    expect(await got(open, 'pots:import', { text, ifExists: 'replace' })).toMatchObject({
      outcome: 'replaced',
    })
    expect((await got(open, 'pots:list', {})).items.map(({ document }) => document.name)).toEqual([
      'Other',
      'Other',
    ])
  })

  test.each([
    ['no JSON', 'hello', undefined],
    ['something else', '{"format":"else"}', /./],
    ['a newer pot', JSON.stringify({ ...samplePot('a'), version: 9 }), 'version'],
    ['a NaN', JSON.stringify(samplePot('a')).replace('900', 'NaN'), undefined],
  ])('%s is not imported', async (_, text, path) => {
    const open = await services()
    const reply = await ask(open, 'pots:import', { text })
    expect(reply.ok).toBe(false)
    if (path !== undefined) expect(reply).toMatchObject({ error: { path } })
    expect((await got(open, 'pots:list', {})).items).toEqual([])
  })
})

describe('a folder that can only be read', () => {
  test('a disk that refuses is named as such, and nothing is lost', async () => {
    const open = await services('shed', { disk: failing({ write: 'EROFS' }) })
    expect(await ask(open, 'pots:save', { document: samplePot('a') })).toMatchObject({
      error: { code: 'read_only', message: /only be read/ },
    })
  })
})
