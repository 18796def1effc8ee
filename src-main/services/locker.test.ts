import { appendFile, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { answer } from './answer'
import type { Services } from './create-services'
import { servicesInTests } from './services-in-tests'
import { got } from './test-calls'

const { data, services } = servicesInTests()

const rope = {
  kind: 'rope',
  material: 'PP',
  diameterMm: 8,
  lengthM: 20,
  cost: 18,
  installedOn: '2025-05-01',
} as const
const dozen = Array.from({ length: 12 }, (_, i) => ({
  number: String(i + 1),
  design: 'round',
  parts: [rope],
}))

/** Twelve pots set, all but number 7 hauled. */
async function dayOut(from: Services) {
  const { state } = await got(from, 'locker:add-pots', { pots: dozen })
  const pots = Object.values(state.pots)
  await got(from, 'locker:record', {
    events: pots.map((pot, i) => ({
      kind: 'set',
      pot: pot.id,
      run: 'day',
      at: `2026-12-04T08:${String(10 + i)}:00.000Z`,
    })),
  })
  const hauled = pots.filter((pot) => pot.number !== '7')
  return got(from, 'locker:record', {
    events: hauled.map((pot, i) => ({
      kind: 'haul',
      pot: pot.id,
      at: `2026-12-04T14:${String(10 + i)}:00.000Z`,
      kept: 1,
    })),
  })
}

test('a dozen pots are set, all but one hauled, and the missing number is seen', async () => {
  const { state } = await dayOut(await services())
  expect(state.missing.map((id) => state.pots[id]?.number)).toEqual(['7'])
  expect(Object.values(state.pots).filter((pot) => pot.been.hauls === 1)).toHaveLength(11)
})

test('a rope found bad is due and to be bought, and is due no more once replaced', async () => {
  const shed = await services()
  const { state } = await dayOut(shed)
  const bad = Object.values(state.parts)[0]
  await got(shed, 'locker:record', { events: [{ kind: 'inspect', part: bad?.part.id ?? '', grade: 4 }] })
  const due = await got(shed, 'locker:export', { what: 'due' })
  expect(due.text).toContain('replace,1,rope,The last inspection found a reason to discard it.')
  const shopping = await got(shed, 'locker:export', { what: 'shopping' })
  expect(shopping.text).toContain('rope-pp-8mm,m,')
  await got(shed, 'locker:replace', {
    part: bad?.part.id ?? '',
    with: { ...rope, installedOn: '2026-12-05' },
    reason: 'worn',
  })
  expect((await got(shed, 'locker:export', { what: 'due' })).text).not.toContain('replace,1,rope')
})

test('what does not fit the history is refused as a whole, with its place, and nothing is written', async () => {
  const shed = await services()
  const { state } = await got(shed, 'locker:add-pots', { pots: dozen.slice(0, 2) })
  const [one, two] = Object.keys(state.pots)
  const refused = await answer(shed.handlers, 'locker:record', {
    events: [
      { kind: 'set', pot: one },
      { kind: 'haul', pot: two },
    ],
  })
  expect(refused).toMatchObject({
    ok: false,
    error: {
      code: 'invalid',
      path: 'events.1',
      message: 'Nothing was written. Pot 2 was hauled but was not set.',
    },
  })
  expect((await got(shed, 'locker:state', {})).state.pots[one ?? '']?.status).toBe('ashore')
  expect(await answer(shed.handlers, 'locker:add-pots', { pots: dozen.slice(1, 3) })).toMatchObject({
    ok: false,
    error: { code: 'invalid', path: 'number' },
  })
})

test('events of another machine are picked up as its file appears and grows, and can be undone here', async () => {
  const shed = await services()
  const { state } = await got(shed, 'locker:add-pots', { pots: dozen.slice(0, 1) })
  const pot = Object.keys(state.pots)[0] ?? ''
  const file = join(data(), 'journal', 'boat.jsonl')
  const line = (seq: number, body: object) =>
    `${JSON.stringify({ version: 1, id: `boat-${seq}`, machine: 'boat', seq, at: `2026-12-05T10:0${seq}:00.000Z`, ...body })}\n`
  await appendFile(file, line(1, { kind: 'set', pot }))
  expect((await got(shed, 'locker:state', {})).state.pots[pot]?.status).toBe('in-water')
  await appendFile(file, line(2, { kind: 'haul', pot, kept: 2 }))
  expect((await got(shed, 'locker:state', {})).state.pots[pot]?.caught.kept).toBe(2)
  const undone = await got(shed, 'locker:record', { events: [{ kind: 'undo', target: 'boat-2' }] })
  expect(undone.state.pots[pot]?.status).toBe('in-water')
  const history = await got(shed, 'locker:history', { limit: 10 })
  expect(history.map(({ event, undone: gone }) => [event.kind, gone])).toContainEqual(['haul', true])
})

test('a single event is found however much was written since', async () => {
  const shed = await services()
  const { state } = await got(shed, 'locker:add-pots', { pots: dozen.slice(0, 1) })
  const pot = Object.keys(state.pots)[0] ?? ''
  const { events } = await got(shed, 'locker:record', {
    events: [
      { kind: 'set', pot },
      { kind: 'haul', pot, kept: 7 },
      ...Array.from({ length: 600 }, () => ({ kind: 'clean' as const, pot })),
    ],
  })
  expect(await got(shed, 'locker:event', { event: events[1] ?? '' })).toMatchObject({ kind: 'haul', kept: 7 })
  expect(await answer(shed.handlers, 'locker:event', { event: 'nothing' })).toMatchObject({
    ok: false,
    error: { code: 'not_found' },
  })
})

test('a photo is kept in the data folder and comes back; what is no photo is refused', async () => {
  const shed = await services()
  const { state } = await got(shed, 'locker:add-pots', { pots: dozen.slice(0, 1) })
  const pot = Object.keys(state.pots)[0] ?? ''
  const bytes = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3])
  const added = await got(shed, 'photos:add', {
    pot,
    base64: bytes.toString('base64'),
    caption: 'Chafe by the eye',
  })
  expect(added.state.pots[pot]?.photos).toMatchObject([{ file: added.file, caption: 'Chafe by the eye' }])
  expect(await readFile(join(data(), 'photos', added.file))).toEqual(bytes)
  expect(await got(shed, 'photos:get', { file: added.file })).toEqual({
    type: 'image/jpeg',
    base64: bytes.toString('base64'),
  })
  for (const other of ['not a photo', 'RIFF\u0024\0\0\0WAVEfmt ']) {
    const base64 = Buffer.from(other, 'latin1').toString('base64')
    expect(await answer(shed.handlers, 'photos:add', { pot, base64 })).toMatchObject({
      ok: false,
      error: { code: 'invalid' },
    })
  }
  const large = Buffer.concat([bytes, Buffer.alloc(11_000_000)]).toString('base64')
  expect((await got(shed, 'photos:add', { pot, base64: large })).file).toMatch(/jpg$/)
  expect(await answer(shed.handlers, 'photos:add', { pot, base64: `${large.slice(4)}====` })).toMatchObject({
    ok: false,
    error: { path: 'base64' },
  })
  expect(await answer(shed.handlers, 'photos:get', { file: '../settings.json' })).toMatchObject({ ok: false })
})
