import { rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test, vi } from 'vitest'
import { samplePot } from '@main/storage/sample-pots'
import type { Notice } from '@shared/contract/bridge'
import { servicesInTests } from './services-in-tests'
import { ask, got } from './test-calls'

const { data, services } = servicesInTests()

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
