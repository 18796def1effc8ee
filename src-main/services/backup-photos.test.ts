import { createHash } from 'node:crypto'
import { mkdir, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import fc from 'fast-check'
import { afterEach, expect, test } from 'vitest'
import { failing } from '@main/storage/failing-disk'
import { samplePot } from '@main/storage/sample-pots'
import { temporaryFolder } from '@main/storage/temporary-folder'
import type { Notice } from '@shared/contract/bridge'
import type { ServiceOptions, Services } from './create-services'
import { openTestServices } from './open-test-services'
import { ask, bringIn, exported, got } from './test-calls'

/* Photos in backups: kept once, checked when put back, and carried along in the file that moves house. */

const data = temporaryFolder()
const opened: Services[] = []
afterEach(() => {
  for (const services of opened.splice(0)) services.close()
})

async function services(folder = 'data', more: Partial<ServiceOptions> = {}) {
  const started = await openTestServices(join(data(), folder), basename(folder), more)
  opened.push(started)
  return started
}

const jpeg = (text: string) => Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.from(text)])
const rope = { kind: 'rope', material: 'PP', diameterMm: 8, lengthM: 20, installedOn: '2025-05-01' } as const

/** A pot, number 7, with photos; returns their files. */
async function potWithPhotos(open: Services, contents: readonly Buffer[]): Promise<string[]> {
  const { state } = await got(open, 'locker:add-pots', {
    pots: [{ number: '7', design: 'round', parts: [rope] }],
  })
  const pot = Object.keys(state.pots)[0] ?? ''
  const files: string[] = []
  for (const content of contents) {
    const base64 = content.toString('base64')
    files.push((await got(open, 'photos:add', { pot, base64, caption: 'chafe by the eye' })).file)
  }
  return files
}

const photo = (folder: string, file: string) => join(data(), folder, 'photos', file)
const keptPhotos = () => readdir(join(data(), 'data', 'backups', 'photos'))

/** Everything in a folder, by name. */
async function contentsOf(folder: string): Promise<Record<string, string>> {
  const names = await readdir(folder).catch(() => [])
  const texts = names.map(async (name) => [name, (await readFile(join(folder, name))).toString('base64')])
  return Object.fromEntries(await Promise.all(texts)) as Record<string, string>
}

async function taken(to: Services, file: Uint8Array, sizeOfPart?: number): Promise<string> {
  const reply = await bringIn(to, file, sizeOfPart)
  if (!reply.ok) throw new Error(reply.error.message)
  return (reply.value as { id: string }).id
}

test('what is saved as a file and put back in an empty folder is the same to the byte', async () => {
  let turn = 0
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.uint8Array({ maxLength: 100_000, size: 'max' }), { maxLength: 5 }),
      fc.array(fc.string({ unit: 'binary', minLength: 1, maxLength: 40 }), { maxLength: 4 }),
      fc.integer({ min: 2000, max: 300_000 }),
      async (photos, notes, sizeOfPart) => {
        const [from, to] = [`from-${++turn}`, `to-${turn}`]
        const open = await services(from)
        await potWithPhotos(
          open,
          photos.map((bytes) => Buffer.concat([jpeg(''), bytes])),
        )
        for (const [i, text] of notes.entries())
          await got(open, 'pots:save', { document: samplePot(`pot-${i}`, { notes: text }) })
        const other = await services(to)
        const id = await taken(other, await exported(open), sizeOfPart)
        expect((await got(other, 'backup:restore', { id })).lost).toEqual([])
        for (const subject of ['photos', 'pots'])
          expect(await contentsOf(join(data(), to, subject))).toEqual(
            await contentsOf(join(data(), from, subject)),
          )
        expect((await got(other, 'journal:list', {})).events).toEqual(
          (await got(open, 'journal:list', {})).events,
        )
        expect((await readdir(join(data(), to, 'backups'))).filter((name) => name.startsWith('.'))).toEqual(
          [],
        )
      },
    ),
    { numRuns: 6 },
  )
})

test('a photo is kept once, named by its SHA-256, however many backups hold it', async () => {
  const open = await services()
  await potWithPhotos(open, [jpeg('one'), jpeg('two'), jpeg('one')])
  await got(open, 'backup:create', {})
  await open.dailyBackup()
  const { id } = await got(open, 'backup:create', {})
  await got(open, 'backup:restore', { id })
  const names = [jpeg('one'), jpeg('two')].map(
    (content) => `${createHash('sha256').update(content).digest('hex')}.jpg`,
  )
  expect((await keptPhotos()).sort()).toEqual(names.sort())
})

test('a photo that went or was spoilt is counted beforehand and put back; the spoilt one is in the backup before', async () => {
  const open = await services()
  const [gone = '', spoilt = '', well = ''] = await potWithPhotos(open, ['a', 'b', 'c'].map(jpeg))
  const { id } = await got(open, 'backup:create', {})
  await rm(photo('data', gone))
  await writeFile(photo('data', spoilt), 'spoilt')
  const { changes, lost } = await got(open, 'backup:preview', { id })
  const ofPhotos = [
    { subject: 'photos', id: 'add', effect: 'add', count: 1 },
    { subject: 'photos', id: 'change', effect: 'change', count: 1 },
    { subject: 'photos', id: 'same', effect: 'same', count: 1 },
  ]
  expect(changes.filter(({ subject }) => subject === 'photos')).toEqual(ofPhotos)
  expect(lost).toEqual([])
  expect((await got(open, 'backup:restore', { id, take: 'missing' })).changes).toEqual([ofPhotos[0]])
  expect(await readFile(photo('data', spoilt), 'utf8')).toBe('spoilt')
  const { before } = await got(open, 'backup:restore', { id })
  expect(await Promise.all([gone, spoilt, well].map((file) => readFile(photo('data', file))))).toEqual(
    ['a', 'b', 'c'].map(jpeg),
  )
  await got(open, 'backup:restore', { id: before })
  expect(await readFile(photo('data', spoilt), 'utf8')).toBe('spoilt')
})

test('a photo damaged in the file is named; the rest is put back', async () => {
  const open = await services()
  const [bad = '', good = ''] = await potWithPhotos(open, [jpeg('to be damaged'), jpeg('to stay whole')])
  const file = await exported(open)
  file[file.indexOf('to be damaged')] = 0
  const other = await services('other')
  const id = await taken(other, file)
  const named = [`Photo of pot 7, chafe by the eye (${bad})`]
  const { changes, lost } = await got(other, 'backup:preview', { id })
  expect(lost).toEqual(named)
  expect(changes).toContainEqual({ subject: 'photos', id: 'add', effect: 'add', count: 1 })
  expect((await got(other, 'backup:restore', { id })).lost).toEqual(named)
  expect(Object.keys(await contentsOf(join(data(), 'other', 'photos')))).toEqual([good])
  expect((await got(other, 'journal:list', {})).events).toHaveLength(3)
})

test('a kept photo that was damaged since leaves the one in the data folder as it is', async () => {
  const open = await services()
  const [file = ''] = await potWithPhotos(open, [jpeg('good')])
  const { id } = await got(open, 'backup:create', {})
  const [kept = ''] = await keptPhotos()
  await writeFile(join(data(), 'data', 'backups', 'photos', kept), jpeg('evil'))
  await writeFile(photo('data', file), jpeg('other'))
  const { lost, changes } = await got(open, 'backup:restore', { id })
  expect(lost).toEqual([`Photo of pot 7, chafe by the eye (${file})`])
  expect(changes.filter(({ subject }) => subject === 'photos')).toEqual([])
  expect(await readFile(photo('data', file))).toEqual(jpeg('other'))
  expect(await readdir(join(data(), 'data', 'photos'))).toEqual([file])
})

test('a photo that cannot be read is named, and stops no backup', async () => {
  const open = await services()
  await potWithPhotos(open, [jpeg('good')])
  await mkdir(photo('data', 'folder.jpg'))
  const notices: Notice[] = []
  open.onNotice((notice) => notices.push(notice))
  expect((await got(open, 'backup:create', {})).lost).toEqual(['folder.jpg'])
  await rm(join(data(), 'data', 'backups'), { recursive: true })
  await open.dailyBackup()
  expect(notices).toContainEqual({
    kind: 'trouble',
    message: 'The backup of today is without what cannot be read: folder.jpg.',
  })
  expect(await keptPhotos()).toHaveLength(1)
})

test.each([
  ['climbs out', '../../../a.jpg'],
  ['is absolute', '/tmp/outside.j'],
  ['climbs out the other way', '..\\..\\..\\a.jp'],
])('a name in the file that %s is followed nowhere', async (_, name) => {
  const open = await services()
  const [file = ''] = await potWithPhotos(open, [jpeg('good')])
  const whole = await exported(open)
  // Of the same length, so that the rest of the file stays true.
  const inside = `photos/${file}`
  const wrong = name.padEnd(inside.length, 'x')
  expect(wrong).toHaveLength(inside.length)
  const tampered = Buffer.from(whole.toString('latin1').replaceAll(inside, wrong), 'latin1')
  expect(tampered).not.toEqual(whole)
  const other = await services('deep/er/other')
  const before = await readdir(data())
  expect(await bringIn(other, tampered)).toMatchObject({ ok: false, error: { code: 'invalid' } })
  expect(await readdir(data())).toEqual(before)
  expect(await readdir(join(data(), 'deep', 'er', 'other', 'backups'))).toEqual([])
})

test('photos go with the last backup that holds them, those that have just come excepted', async () => {
  let day = new Date('2026-12-05T10:00:00Z')
  const open = await services('data', { now: () => day })
  const [file = ''] = await potWithPhotos(open, [jpeg('old'), jpeg('kept')])
  await got(open, 'backup:create', {})
  const old = join(data(), 'data', 'backups', 'photos')
  for (const name of await keptPhotos()) await utimes(join(old, name), day, day)
  await writeFile(join(old, 'just-come.jpg'), 'behind its backup')
  const future = new Date('2027-06-01T10:00:00Z')
  await utimes(join(old, 'just-come.jpg'), future, future)
  await rm(photo('data', file))
  for (let turn = 1; turn <= 10; turn++) {
    expect(await keptPhotos()).toHaveLength(3)
    day = new Date(day.getTime() + 86_400_000)
    await got(open, 'backup:create', {})
  }
  const kept = createHash('sha256').update(jpeg('kept')).digest('hex')
  expect((await keptPhotos()).sort()).toEqual([`${kept}.jpg`, 'just-come.jpg'].sort())
})

test('a folder that can only be read can be taken elsewhere, and takes nothing in', async () => {
  await potWithPhotos(await services(), [jpeg('good')])
  const open = await services('data', { disk: failing({ write: 'EROFS' }) })
  expect(await ask(open, 'backup:create', {})).toMatchObject({ error: { code: 'read_only' } })
  const other = await services('other')
  const file = await exported(open)
  const id = await taken(other, file)
  expect((await got(other, 'backup:restore', { id })).lost).toEqual([])
  expect(Object.values(await contentsOf(join(data(), 'other', 'photos')))).toEqual([
    jpeg('good').toString('base64'),
  ])
  expect(await bringIn(open, file)).toMatchObject({ error: { code: 'read_only' } })
  expect((await readdir(join(data(), 'data', 'backups'))).filter((name) => name.startsWith('.'))).toEqual([])
})

test('a disk that fills up while photos are put back says so, and once there is room all of it comes', async () => {
  const open = await services()
  const [file = ''] = await potWithPhotos(open, [jpeg('good')])
  const whole = await exported(open)
  const id = await taken(await services('other'), whole)
  const full = await services('other', { disk: failing({ write: 'ENOSPC' }) })
  expect(await ask(full, 'backup:restore', { id })).toMatchObject({
    error: { code: 'storage', message: /full/ },
  })
  const roomy = await services('other')
  expect((await got(roomy, 'backup:restore', { id })).lost).toEqual([])
  expect(await readFile(photo('other', file))).toEqual(jpeg('good'))
})
