import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { failing } from './failing-disk'
import { potFolder, samplePot } from './sample-pots'
import { asResult } from './storage-fault'
import { temporaryFolder } from './temporary-folder'

const data = temporaryFolder()
const filesOf = (...path: string[]) => readdir(join(data(), ...path))
const textOf = (...path: string[]) => readFile(join(data(), ...path), 'utf8')

async function saved(id = 'a') {
  const folder = potFolder(data())
  const result = await folder.save(samplePot(id), undefined)
  if (!result.ok) throw new Error(result.error.message)
  return { folder, stored: result.value }
}

async function put(name: string, content: string) {
  await mkdir(join(data(), 'pots'), { recursive: true })
  await writeFile(join(data(), 'pots', name), content)
}

describe('saving', () => {
  test('writes the published file, with nothing of ours in it', async () => {
    await saved()
    expect(JSON.parse(await textOf('pots', 'a.pot.json'))).toEqual(samplePot('a'))
    expect(await filesOf('pots')).toEqual(['a.pot.json'])
  })

  test('replaces the revision it started from', async () => {
    const { folder, stored } = await saved()
    const next = await folder.save(samplePot('a', { name: 'Renamed' }), stored.revision)
    expect(next).toMatchObject({
      ok: true,
      value: { document: { name: 'Renamed' }, savedBy: 'shed computer' },
    })
    expect(await folder.get('a')).toEqual(next)
  })

  test('the same content is saved already, whoever asks', async () => {
    const { folder, stored } = await saved()
    expect(await folder.save(samplePot('a'), undefined)).toEqual({ ok: true, value: stored })
  })

  test.each([
    ['a new pot over one that is there', undefined],
    ['a change that started from another revision', '0123456789abcdef'],
  ])('refuses %s', async (_, base) => {
    const { folder } = await saved()
    const result = await folder.save(samplePot('a', { name: 'Other' }), base)
    expect(result).toMatchObject({ ok: false, error: { code: 'conflict' } })
    expect(JSON.parse(await textOf('pots', 'a.pot.json'))).toEqual(samplePot('a'))
  })

  test('refuses a change to a file that changed underneath, and one that was removed', async () => {
    const { folder, stored } = await saved()
    await put('a.pot.json', JSON.stringify(samplePot('a', { name: 'By hand' })))
    expect(await folder.save(samplePot('a', { name: 'Mine' }), stored.revision)).toMatchObject({
      error: { code: 'conflict', message: /changed elsewhere/ },
    })
    await folder.remove('a', undefined)
    expect(await folder.save(samplePot('a', { name: 'Mine' }), stored.revision)).toMatchObject({
      error: { code: 'conflict', message: /removed elsewhere/ },
    })
  })

  test('spacing and order of fields are no change', async () => {
    const { folder, stored } = await saved()
    const { format, ...rest } = samplePot('a')
    await put('a.pot.json', JSON.stringify({ ...rest, format }))
    expect(await folder.save(samplePot('a', { name: 'Next' }), stored.revision)).toMatchObject({ ok: true })
  })

  test('does not put a new pot on the file of one that differs by case alone', async () => {
    const { folder } = await saved('abc')
    expect(await folder.save(samplePot('ABC'), undefined)).toMatchObject({ error: { code: 'conflict' } })
  })

  test('a full disk leaves the old pot and says so', async () => {
    const { stored } = await saved()
    const full = potFolder(data(), 'shed', failing({ write: 'ENOSPC' }))
    const result = await asResult(() => full.save(samplePot('a', { name: 'Next' }), stored.revision))
    expect(result).toMatchObject({ ok: false, error: { code: 'storage', message: /disk is full/ } })
    expect(await potFolder(data()).get('a')).toMatchObject({ value: stored })
  })

  test('saves in the order asked for', async () => {
    const { folder, stored } = await saved()
    let revision = stored.revision
    const results = await Promise.all(
      [1, 2].map((turn) => folder.save(samplePot('a', { name: `Turn ${turn}` }), revision)),
    )
    expect(results.map(({ ok }) => ok)).toEqual([true, false])
    revision = results[0]?.ok ? results[0].value.revision : ''
    expect(await folder.save(samplePot('a', { name: 'Turn 2' }), revision)).toMatchObject({ ok: true })
  })
})

describe('removing and taking back', () => {
  test('a removed pot comes back as it was', async () => {
    const { folder, stored } = await saved()
    expect(await folder.remove('a', stored.revision)).toEqual({ ok: true, value: {} })
    expect(await filesOf('pots')).toEqual([])
    expect(await folder.get('a')).toMatchObject({ error: { code: 'not_found' } })
    expect(await folder.restore('a')).toMatchObject({ ok: true, value: { document: samplePot('a') } })
  })

  test('the one removed last comes back, and never one whose id only ends the same', async () => {
    const { folder } = await saved('a')
    await folder.save(samplePot('b-a'), undefined)
    await folder.remove('b-a', undefined)
    expect(await folder.restore('a')).toMatchObject({ value: { document: { id: 'a' } } })
    await folder.remove('a', undefined)
    await folder.save(samplePot('a', { name: 'Second' }), undefined)
    await folder.remove('a', undefined)
    expect(await folder.restore('a')).toMatchObject({ value: { document: { name: 'Second' } } })
  })

  test('refuses to remove what changed since', async () => {
    const { folder } = await saved()
    expect(await folder.remove('a', '0123456789abcdef')).toMatchObject({ error: { code: 'conflict' } })
    expect(await folder.remove('nobody', undefined)).toMatchObject({ error: { code: 'not_found' } })
  })
})

describe('damage', () => {
  test.each([
    ['empty', ''],
    ['NULs', '\0'.repeat(400)],
    ['null', 'null'],
    ['a list', '[]'],
    ['cut off', JSON.stringify(samplePot('a')).slice(0, 60)],
  ])('a file that is %s is set aside, and the last good version offered', async (_, content) => {
    const { folder } = await saved()
    await put('a.pot.json', content)
    const { documents, odd } = await folder.reader.contents()
    expect(documents).toEqual([])
    expect(odd).toMatchObject([{ role: 'set-aside', documentId: 'a' }])
    const [aside = ''] = await filesOf('pots')
    expect(aside).toBe('a.pot.json.bad-20261205-100000.json')
    expect(await textOf('pots', aside)).toBe(content)
  })

  test('is told to everybody who reads the folder at the same moment', async () => {
    await mkdir(join(data(), 'pots'), { recursive: true })
    await writeFile(join(data(), 'pots', 'a.pot.json'), '\0\0\0')
    const { reader } = potFolder(data())
    const readings = await Promise.all([reader.contents(), reader.contents(), reader.contents()])
    for (const { odd } of readings) expect(odd).toMatchObject([{ role: 'set-aside', documentId: 'a' }])
  })

  test('a newer file is left as it is, unread, and not written over', async () => {
    const { folder, stored } = await saved()
    const newer = JSON.stringify({ ...samplePot('a'), version: 2, wings: 4 })
    await put('a.pot.json', newer)
    expect((await folder.reader.contents()).odd).toMatchObject([{ role: 'newer', fileName: 'a.pot.json' }])
    expect(await folder.get('a')).toMatchObject({ error: { code: 'newer_version' } })
    expect(await folder.save(samplePot('a', { name: 'Mine' }), stored.revision)).toMatchObject({ ok: false })
    expect(await textOf('pots', 'a.pot.json')).toBe(newer)
  })

  test('a file with an unknown field is refused by its path and left as it is', async () => {
    await put('a.pot.json', JSON.stringify({ ...samplePot('a'), wings: 4 }))
    const { odd } = await potFolder(data()).reader.contents()
    expect(odd).toMatchObject([{ role: 'unreadable', error: { path: 'wings' } }])
    expect(await filesOf('pots')).toEqual(['a.pot.json'])
  })
})
