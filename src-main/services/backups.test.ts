import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { expect, test } from 'vitest'
import { samplePot } from '@main/storage/sample-pots'
import { servicesInTests } from './services-in-tests'
import { ask, bringIn, exported, got } from './test-calls'

const { data, services } = servicesInTests()

const idOf = (reply: Awaited<ReturnType<typeof bringIn>>) => {
  if (!reply.ok) throw new Error(reply.error.message)
  return (reply.value as { id: string }).id
}

/** As the program wrote it before backups held photos. */
const firstBackup = {
  format: 'potwright/backup',
  version: 1,
  writtenAt: '2026-11-30T08:00:00.000Z',
  machine: 'old computer',
  pots: [samplePot('old')],
  waters: [],
  packs: [],
  materials: { format: 'potwright/materials', version: 1 },
  settings: { format: 'potwright/settings', version: 1 },
  journal: [
    {
      ...{ version: 1, id: 'old-1', machine: 'old', seq: 1, at: '2026-11-30T07:00:00.000Z' },
      ...{ kind: 'clean', pot: 'pot-7' },
    },
  ],
}

const filled = async () => {
  const open = await services()
  await got(open, 'pots:save', { document: samplePot('a') })
  await got(open, 'journal:append', { events: [{ kind: 'clean', pot: 'pot-7' }] })
  await got(open, 'settings:set', { set: { units: 'imperial' } })
  return open
}

test('say what they would change, put it back, and keep the state before', async () => {
  const open = await filled()
  const { id } = await got(open, 'backup:create', {})
  const { revision } = await got(open, 'pots:get', { id: 'a' })
  await got(open, 'pots:save', { document: samplePot('a', { name: 'Spoilt' }), revision })
  await got(open, 'pots:save', { document: samplePot('b') })
  const { changes, untouched } = await got(open, 'backup:preview', { id })
  expect(changes.find(({ subject }) => subject === 'pots')).toMatchObject({ id: 'a', effect: 'change' })
  expect(changes.find(({ subject }) => subject === 'settings')).toMatchObject({ effect: 'same' })
  expect(untouched).toBe(1)
  const { before } = await got(open, 'backup:restore', { id })
  const names = async () => (await got(open, 'pots:list', {})).items.map(({ document }) => document.name)
  expect(await names()).toEqual(['Pot a', 'Pot b'])
  await got(open, 'backup:restore', { id: before })
  expect(await names()).toEqual(['Pot b', 'Spoilt'])
})

test('take only what is missing, and leave what was changed here', async () => {
  const open = await filled()
  await got(open, 'pots:save', { document: samplePot('gone') })
  const { id } = await got(open, 'backup:create', {})
  const { revision } = await got(open, 'pots:get', { id: 'a' })
  await got(open, 'pots:save', { document: samplePot('a', { name: 'Better' }), revision })
  await got(open, 'pots:delete', { id: 'gone' })
  const { changes } = await got(open, 'backup:restore', { id, take: 'missing' })
  expect(changes).toMatchObject([{ subject: 'pots', id: 'gone', effect: 'add' }])
  const names = (await got(open, 'pots:list', {})).items.map(({ document }) => document.name)
  expect(names).toEqual(['Better', 'Pot gone'])
})

test('move everything to another machine in one file', async () => {
  const open = await filled()
  expect((await got(open, 'backup:export', {})).fileName).toBe('potwright-2026-12-05.backup.zip')
  const other = await services('boat', { folder: 'other' })
  const id = idOf(await bringIn(other, await exported(open)))
  await got(other, 'backup:restore', { id })
  expect((await got(other, 'pots:list', {})).items).toHaveLength(1)
  expect((await got(other, 'journal:list', {})).events).toMatchObject([
    { kind: 'clean', machine: 'shed', seq: 1 },
  ])
  await got(other, 'backup:restore', { id })
  expect((await got(other, 'journal:list', {})).events).toHaveLength(1)
})

test('of the day are made once, and not of nothing', async () => {
  const empty = await services()
  await empty.dailyBackup()
  expect(await got(empty, 'backup:list', {})).toEqual([])
  const open = await filled()
  await open.dailyBackup()
  await open.dailyBackup()
  expect(await got(open, 'backup:list', {})).toMatchObject([{ reason: 'daily' }])
})

test('that are damaged or gone change nothing', async () => {
  const open = await filled()
  const { id } = await got(open, 'backup:create', {})
  await writeFile(join(data(), 'backups', `${id}.backup.json.gz`), 'not packed')
  expect(await ask(open, 'backup:restore', { id })).toMatchObject({ error: { code: 'invalid' } })
  expect(await ask(open, 'backup:restore', { id: '20200101-000000-daily' })).toMatchObject({
    error: { code: 'not_found' },
  })
  for (const text of ['{}', '', 'PK and no more'])
    expect(await bringIn(open, Buffer.from(text))).toMatchObject({ error: { code: 'invalid' } })
  expect(await ask(open, 'backup:preview', { id: '../../x' })).toMatchObject({ error: { code: 'invalid' } })
})

test.each([
  ['packs', { region: '../../../outside' }],
  ['pots', { ...samplePot('a'), id: '../outside' }],
])('whose %s name a place outside the data folder are not taken in', async (subject, item) => {
  const open = await filled()
  const tampered = JSON.stringify({ ...firstBackup, [subject]: [item] })
  expect(await bringIn(open, Buffer.from(tampered))).toMatchObject({ error: { code: 'invalid' } })
})

test('of the first kind, here or brought along, can be put back still', async () => {
  const open = await services()
  await mkdir(join(data(), 'backups'))
  const old = '20261130-080000-daily'
  await writeFile(join(data(), 'backups', `${old}.backup.json.gz`), gzipSync(JSON.stringify(firstBackup)))
  for (const id of [old, idOf(await bringIn(open, Buffer.from(JSON.stringify(firstBackup))))]) {
    const { changes, lost } = await got(open, 'backup:restore', { id })
    expect(lost).toEqual([])
    expect(changes).toContainEqual(expect.objectContaining({ subject: 'pots', id: 'old' }))
  }
  expect(await got(open, 'pots:get', { id: 'old' })).toMatchObject({ document: samplePot('old') })
  expect((await got(open, 'journal:list', {})).events).toMatchObject([{ id: 'old-1' }])
})

test('a file that is begun ends the one before; what is left of that is refused', async () => {
  const open = await filled()
  const first = await got(open, 'backup:export', {})
  const second = await got(open, 'backup:export', {})
  expect(await ask(open, 'backup:export-part', { transfer: first.transfer })).toMatchObject({
    error: { code: 'not_found' },
  })
  expect((await got(open, 'backup:export-part', { transfer: second.transfer })).last).toBe(true)
  const one = await got(open, 'backup:import-part', { base64: 'AAAA' })
  await got(open, 'backup:import-part', { base64: 'AAAA' })
  for (const channel of ['backup:import-part', 'backup:import'] as const)
    expect(await ask(open, channel, { transfer: one.transfer, base64: 'AAAA' } as never)).toMatchObject({
      ok: false,
    })
})
