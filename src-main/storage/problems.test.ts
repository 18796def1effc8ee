import { cp, mkdir, readdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { openProblems, settle } from './problems'
import { potFolder, samplePot } from './sample-pots'
import { temporaryFolder } from './temporary-folder'

const data = temporaryFolder()

const problemsOf = async (machine = 'shed') => {
  const folder = potFolder(data(), machine)
  return openProblems(folder, await folder.reader.contents())
}

async function put(name: string, content: unknown) {
  await mkdir(join(data(), 'pots'), { recursive: true })
  await writeFile(join(data(), 'pots', name), JSON.stringify(content))
}

async function namesKept() {
  const { documents } = await potFolder(data()).reader.contents()
  return documents.map(({ stored }) => stored.document.name)
}

/** Two machines start from one pot and change it without knowing of each other; the office's file arrives last. */
async function changedApart() {
  const office = join(data(), 'elsewhere')
  const shed = potFolder(data(), 'shed')
  const first = await shed.save(samplePot('a'), undefined)
  if (!first.ok) throw new Error(first.error.message)
  for (const part of ['pots', 'versions'])
    await cp(join(data(), part), join(office, part), { recursive: true })
  await shed.save(samplePot('a', { name: 'From the shed' }), first.value.revision)
  await potFolder(office, 'office').save(samplePot('a', { name: 'From the office' }), first.value.revision)
  for (const part of ['pots', 'versions/office'])
    await cp(join(office, part), join(data(), part), { recursive: true })
}

describe('a pot changed on two machines apart', () => {
  test('is told, with both names and the other version', async () => {
    await changedApart()
    for (const machine of ['shed', 'office'])
      expect(await problemsOf(machine)).toMatchObject([
        { id: 'apart:shed:a', kind: 'changed-apart', documentId: 'a', other: { name: 'From the shed' } },
      ])
    expect((await problemsOf())[0]?.message).toMatch(/shed computer.*office computer/)
  })

  test.each([
    ['keep-current', ['From the office']],
    ['take-other', ['From the shed']],
    ['keep-both', ['From the office', 'From the shed (other one)']],
  ] as const)('is settled by %s, for both machines', async (choice, names) => {
    await changedApart()
    expect(await settle(potFolder(data(), 'shed'), 'apart:shed:a', choice, 'copy')).toEqual({
      ok: true,
      value: {},
    })
    expect(await namesKept()).toEqual(names)
    expect(await problemsOf('shed')).toEqual([])
    expect(await problemsOf('office')).toEqual([])
  })

  test('changes one after the other are no problem', async () => {
    const first = await potFolder(data(), 'shed').save(samplePot('a'), undefined)
    if (!first.ok) throw new Error(first.error.message)
    const second = await potFolder(data(), 'office').save(
      samplePot('a', { name: 'Next' }),
      first.value.revision,
    )
    if (!second.ok) throw new Error(second.error.message)
    await potFolder(data(), 'shed').save(samplePot('a', { name: 'Last' }), second.value.revision)
    expect(await problemsOf()).toEqual([])
  })

  test('a save cut short by a crash is no problem: the file is what counts', async () => {
    const shed = potFolder(data())
    const first = await shed.save(samplePot('a'), undefined)
    if (!first.ok) throw new Error(first.error.message)
    await shed.save(samplePot('a', { name: 'Never arrived' }), first.value.revision)
    await put('a.pot.json', samplePot('a'))
    expect(await problemsOf()).toEqual([])
    expect(await shed.save(samplePot('a', { name: 'Next' }), first.value.revision)).toMatchObject({
      ok: true,
    })
  })
})

describe('copies that a sync engine or a person made', () => {
  const copies = [
    'a (conflicted copy 2026-12-05).pot.json',
    'a.pot (conflicted copy 2026-12-05 091200).json',
    'a.sync-conflict-20261205-091200-ABCDEF7.pot.json',
    'a.pot.sync-conflict-20261205-091200-ABCDEF7.json',
    'a-DESKTOP-7K2.pot.json',
    'a (1).pot.json',
    'a - Copy.pot.json',
    'a~conflict.pot.json',
  ]

  test.each(copies)('%s is recognised', async (name) => {
    await put('a.pot.json', samplePot('a'))
    await put(name, samplePot('a', { name: 'Other' }))
    expect(await problemsOf()).toMatchObject([
      { id: `file:${name}`, kind: 'copy', documentId: 'a', other: { name: 'Other' } },
    ])
  })

  test('a copy that says the same is no problem', async () => {
    await put('a.pot.json', samplePot('a'))
    await put('a (1).pot.json', samplePot('a'))
    expect(await problemsOf()).toEqual([])
  })

  test.each([
    ['keep-both', ['Other (other one)', 'Pot a']],
    ['keep-current', ['Pot a']],
    ['take-other', ['Other']],
  ] as const)('%s settles it and loses nothing', async (choice, names) => {
    await put('a.pot.json', samplePot('a'))
    await put('a (1).pot.json', samplePot('a', { name: 'Other' }))
    await settle(potFolder(data()), 'file:a (1).pot.json', choice, 'copy')
    expect(await namesKept()).toEqual(names)
    expect(await problemsOf()).toEqual([])
    expect(await readdir(join(data(), 'removed', 'pots'))).toContain('20261205-100000-001-a (1).pot.json')
  })

  test('a file dropped into the folder under another name can be taken in', async () => {
    await put('from a friend.pot.json', samplePot('b'))
    await settle(potFolder(data()), 'file:from a friend.pot.json', 'take-other', 'copy')
    expect(await namesKept()).toEqual(['Pot b'])
  })
})

test('after damage the newest version kept by any machine can be put back', async () => {
  await potFolder(data(), 'shed').save(samplePot('a', { name: 'Good one' }), undefined)
  await writeFile(join(data(), 'pots', 'a.pot.json'), '')
  const [problem] = await problemsOf()
  expect(problem).toMatchObject({ kind: 'set-aside', documentId: 'a', other: { name: 'Good one' } })
  await settle(potFolder(data()), problem?.id ?? '', 'take-other', 'copy')
  expect(await namesKept()).toEqual(['Good one'])
  expect(await problemsOf()).toEqual([])
})

test('what is settled already, or has no second version to take, is refused', async () => {
  await put('a.pot.json', { ...samplePot('a'), wings: 4 })
  const folder = potFolder(data())
  expect(await settle(folder, 'file:gone.json', 'keep-both', 'copy')).toMatchObject({
    error: { code: 'not_found' },
  })
  expect(await settle(folder, 'file:a.pot.json', 'take-other', 'copy')).toMatchObject({
    error: { code: 'invalid' },
  })
})
