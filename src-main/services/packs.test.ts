import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { PackFolder, type PackJson } from '@main/storage/pack-folder'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { emptyOwnPack } from '@shared/rules/own-rules'
import { readPacks } from '@shared/rules/packs'
import { packHandlers } from './packs'

const data = temporaryFolder()
const handlers = () => packHandlers(new PackFolder(data(), () => Promise.resolve()))
const file = () => join(data(), 'packs', 'US-WA.rules.json')

const base = readPacks().get('US-WA')
if (!base) throw new Error('no pack')
const rule = {
  id: 'own-1',
  subject: 'rope',
  says: 'The rope is thick.',
  standing: 'law',
  confidence: 'read',
  sources: [0],
}
const min = { op: 'min', quantity: 'rope.diameter', value: 8, unit: 'mm' }
const good = { ...emptyOwnPack(base, '2026-12-03'), rules: [{ ...rule, check: min }] } as PackJson

/** What is wrong, the rules with it in them, and where the refusal points. */
const faults: readonly [string, readonly object[], string][] = [
  ['an unknown operator', [{ ...rule, check: { ...min, op: 'roughly' } }], 'rules.0.check'],
  ['a wrong unit', [{ ...rule, check: { ...min, unit: 'kg' } }], 'rules.0.check.unit'],
  ['an impossible date', [{ ...rule, check: min, from: '2026-02-30' }], 'rules.0.from'],
  [
    'an id used twice',
    [
      { ...rule, check: min },
      { ...rule, check: min },
    ],
    'rules.1.id',
  ],
  [
    'a zone that nobody lists',
    [{ ...rule, check: min, applies: { zones: ['nowhere'] } }],
    `rules.${base.rules.length}.zones`,
  ],
]

async function inUse() {
  const listed = await handlers()['packs:list']({})
  if (!listed.ok) throw new Error(listed.error.message)
  const { packs, problems } = listed.value
  return { wa: packs.find(({ region }) => region === 'US-WA'), problems, count: packs.length }
}

test.each(faults)(
  'a pack with %s is refused whole, and the one before stays in use',
  async (_, rules, path) => {
    expect(await handlers()['packs:save']({ pack: good })).toMatchObject({ ok: true })
    const kept = await readFile(file(), 'utf8')
    expect(await handlers()['packs:save']({ pack: { ...good, rules } })).toMatchObject({
      ok: false,
      error: { code: 'invalid', path: expect.stringContaining(path) as string },
    })
    expect(await readFile(file(), 'utf8')).toBe(kept)
    const { wa } = await inUse()
    expect(wa?.owner).toBe('user')
    expect((wa?.pack['rules'] as unknown[]).at(-1)).toMatchObject({ id: 'own-1' })
  },
)

test.each(faults)('a file with %s at the start leaves the shipped rules in use', async (_, rules, path) => {
  await mkdir(join(data(), 'packs'))
  const text = JSON.stringify({ ...good, rules })
  await writeFile(file(), text)
  const { wa, problems, count } = await inUse()
  expect(wa).toMatchObject({ owner: 'built-in', pack: { rules: base.rules } })
  expect(count).toBe(readPacks().size)
  expect(problems).toHaveLength(1)
  expect(problems[0]?.message).toMatch(
    /^US-WA\.rules\.json is not in use; the shipped rules for Washington State are\./,
  )
  expect(problems[0]?.message).toContain(path)
  expect(await readFile(file(), 'utf8')).toBe(text)
})
