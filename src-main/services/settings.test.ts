import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { failing } from '@main/storage/failing-disk'
import { servicesInTests } from './services-in-tests'
import { ask, got } from './test-calls'

const { data, services } = servicesInTests()

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
