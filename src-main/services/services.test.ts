import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { failing } from '@main/storage/failing-disk'
import { samplePot } from '@main/storage/sample-pots'
import { temporaryFolder } from '@main/storage/temporary-folder'
import type { Notice } from '@shared/contract/bridge'
import { contract } from '@shared/contract/contract'
import { answer } from './answer'
import type { Services } from './create-services'
import { openTestServices } from './open-test-services'
import { ask, got } from './test-calls'

const data = temporaryFolder()
const opened: Services[] = []
afterEach(() => {
  for (const services of opened.splice(0)) services.close()
})

async function services(machine = 'shed', more: Parameters<typeof openTestServices>[2] = {}) {
  const started = await openTestServices(data(), machine, more)
  opened.push(started)
  return started
}

describe('calls from outside', () => {
  test.each([
    ['an unknown channel', 'pots:burn', {}, 'not_found'],
    ['a name every object has', 'toString', {}, 'not_found'],
    ['a request without its fields', 'pots:get', {}, 'invalid'],
    ['a path for an id', 'pots:get', { id: '../settings' }, 'invalid'],
    ['a field too many', 'pots:get', { id: 'a', path: '/x' }, 'invalid'],
    ['no object', 'pots:list', null, 'invalid'],
    ['a negative size', 'pots:save', { document: samplePot('a', { catchKg: -1 }) }, 'invalid'],
  ])('%s is refused', async (_, channel, request, code) => {
    expect(await answer((await services()).handlers, channel, request)).toMatchObject({
      ok: false,
      error: { code },
    })
  })

  test('what is refused names the field and changes nothing', async () => {
    const reply = await answer((await services()).handlers, 'pots:save', {
      document: samplePot('a', { catchKg: -1 }),
    })
    expect(reply).toMatchObject({ error: { path: 'document.catchKg', message: /at least 0/ } })
    expect(await readdir(join(data(), 'pots'))).toEqual([])
  })

  test('every channel of the contract is answered for', async () => {
    const { handlers } = await services()
    expect(Object.keys(handlers).sort()).toEqual(Object.keys(contract).sort())
  })
})

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

describe('settings', () => {
  test('are set field by field, cleared, kept, and this machine’s own', async () => {
    const open = await services('shed')
    await Promise.all([
      got(open, 'settings:set', { set: { units: 'imperial' } }),
      got(open, 'settings:set', { set: { theme: 'dark' } }),
    ])
    expect(await got(open, 'settings:get', {})).toMatchObject({ units: 'imperial', theme: 'dark' })
    await got(open, 'settings:set', { set: {}, clear: ['theme'] })
    const again = await got(await services('shed'), 'settings:get', {})
    expect(again).toEqual({ format: 'potwright/settings', version: 1, units: 'imperial' })
    expect(await got(await services('office'), 'settings:get', {})).not.toHaveProperty('units')
  })

  test.each([
    ['damaged', '{"units":', true],
    ['null', 'null', true],
    ['newer', '{"format":"potwright/settings","version":7}', false],
  ])('%s ones never stop the program', async (_, content, writable) => {
    await mkdir(join(data(), 'settings'))
    await writeFile(join(data(), 'settings', 'shed.json'), content)
    const open = await services()
    expect(await got(open, 'settings:get', {})).toEqual({ format: 'potwright/settings', version: 1 })
    expect((await ask(open, 'settings:set', { set: { units: 'metric' } })).ok).toBe(writable)
    const kept = await readdir(join(data(), 'settings'))
    const texts = await Promise.all(kept.map((name) => readFile(join(data(), 'settings', name), 'utf8')))
    expect(texts).toContain(content)
  })

  test('a failed save leaves them as they were', async () => {
    const open = await services('shed', { disk: failing({ write: 'ENOSPC' }) })
    expect(await ask(open, 'settings:set', { set: { units: 'imperial' } })).toMatchObject({
      error: { code: 'storage' },
    })
    expect(await got(open, 'settings:get', {})).not.toHaveProperty('units')
  })
})

describe('rules', () => {
  test('the shipped ones are there; the user’s go over them and away again', async () => {
    const open = await services()
    const { packs } = await got(open, 'packs:list', {})
    expect(packs.map(({ region }) => region)).toContain('US-WA')
    const shipped = await got(open, 'packs:get', { region: 'US-WA' })
    expect(shipped.owner).toBe('built-in')
    await got(open, 'packs:save', { pack: { ...shipped.pack, name: 'My Washington', own: true } })
    expect(await got(open, 'packs:get', { region: 'US-WA' })).toMatchObject({
      owner: 'user',
      pack: { name: 'My Washington' },
      builtIn: { name: shipped.pack['name'] },
    })
    await got(open, 'packs:delete', { region: 'US-WA' })
    expect((await got(open, 'packs:get', { region: 'US-WA' })).owner).toBe('built-in')
    expect(await ask(open, 'packs:delete', { region: 'US-WA' })).toMatchObject({
      error: { code: 'not_found' },
    })
    expect(await ask(open, 'packs:get', { region: 'ZZ' })).toMatchObject({
      error: { code: 'not_found', path: 'region' },
    })
  })

  test('a pack that does not fit is refused by its path, and a bad file reported and left alone', async () => {
    await mkdir(join(data(), 'packs'))
    await writeFile(join(data(), 'packs', 'US-WA.rules.json'), '{"region":"US-WA"}')
    await writeFile(join(data(), 'packs', 'AU-QLD.rules.json'), '')
    await writeFile(join(data(), 'packs', 'mine.rules.json'), '{"region":"mine"}')
    const open = await services()
    expect(await ask(open, 'packs:save', { pack: { format: 'potwright/rules', version: 1 } })).toMatchObject({
      ok: false,
    })
    const { packs, problems } = await got(open, 'packs:list', {})
    expect(problems.map(({ file }) => file).sort()).toEqual([
      'AU-QLD.rules.json',
      'US-WA.rules.json',
      'mine.rules.json',
    ])
    expect(packs.find(({ region }) => region === 'US-WA')?.owner).toBe('built-in')
    expect(await readFile(join(data(), 'packs', 'US-WA.rules.json'), 'utf8')).toBe('{"region":"US-WA"}')
  })
})

describe('a folder that changes underneath', () => {
  test.each([
    ['pots', 'pots/z.pot.json', JSON.stringify(samplePot('z'))],
    ['journal', 'journal/office.jsonl', ''],
    ['packs', 'packs/US-OR.rules.json', '{}'],
    ['materials', 'materials.json', '{"format":"potwright/materials","version":1}'],
  ])('%s: told within a moment', async (subject, file, content) => {
    const open = await services()
    const notices: Notice[] = []
    open.onNotice((notice) => notices.push(notice))
    await writeFile(join(data(), file), content)
    await vi.waitFor(() => expect(notices).toContainEqual({ kind: 'changed', subject }), 3000)
  })

  test('settings changed by hand are read again', async () => {
    const open = await services()
    await writeFile(
      join(data(), 'settings', 'shed.json'),
      '{"format":"potwright/settings","version":1,"theme":"dark"}',
    )
    await vi.waitFor(
      async () => expect(await got(open, 'settings:get', {})).toMatchObject({ theme: 'dark' }),
      3000,
    )
  })

  test('one that turns into a file stops nothing; the others are told of as before', async () => {
    const open = await services()
    const notices: Notice[] = []
    open.onNotice((notice) => notices.push(notice))
    await rm(join(data(), 'waters'), { recursive: true })
    await writeFile(join(data(), 'waters'), '')
    await writeFile(join(data(), 'pots', 'z.pot.json'), JSON.stringify(samplePot('z')))
    await vi.waitFor(() => expect(notices).toContainEqual({ kind: 'changed', subject: 'pots' }), 3000)
    expect(await ask(open, 'waters:list', {})).toMatchObject({ error: { code: 'storage' } })
  })

  test('what we write ourselves is not told', async () => {
    const open = await services()
    const notices: Notice[] = []
    open.onNotice((notice) => notices.push(notice))
    await got(open, 'pots:save', { document: samplePot('a') })
    await got(open, 'journal:append', { events: [{ kind: 'clean', pot: 'pot-7' }] })
    await writeFile(join(data(), 'pots', 'z.pot.json'), JSON.stringify(samplePot('z')))
    await vi.waitFor(() => expect(notices.length).toBeGreaterThan(0), 3000)
    await new Promise((done) => setTimeout(done, 300))
    expect(notices).toEqual([{ kind: 'changed', subject: 'pots' }])
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
