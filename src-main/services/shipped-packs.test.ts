import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { servicesInTests } from './services-in-tests'
import { ask, got } from './test-calls'

const { data, services } = servicesInTests()

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
