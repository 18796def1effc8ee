import { mkdir, readdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { expect, test } from 'vitest'
import { commands } from './commands'
import { runCommandLine } from './run'

const data = temporaryFolder()

const potwright = (...args: string[]) => potwrightIn({}, ...args)

async function potwrightIn(env: Record<string, string>, ...args: string[]) {
  const said = { out: '', error: '' }
  const code = await runCommandLine(commands, args, {
    write: (text) => (said.out += text),
    writeError: (text) => (said.error += text),
    readStandardInput: () => Promise.resolve(''),
    env,
    platform: 'linux',
    now: () => new Date('2026-05-01T10:00:00Z'),
  })
  return { code, ...said }
}

const line = (seq: number, at: string, body: object) =>
  JSON.stringify({ version: 1, id: `e${seq}`, machine: 'shed', seq, at, ...body })
async function journal(...more: string[]) {
  await mkdir(join(data(), 'journal'), { recursive: true })
  const parts = [
    {
      id: 'rope',
      kind: 'rope',
      material: 'PP',
      diameterMm: 8,
      lengthM: 20,
      cost: 18,
      installedOn: '2026-04-01',
    },
  ]
  const add = line(1, '2026-04-01T08:00:00.000Z', {
    kind: 'add-pots',
    pots: [{ pot: 'p', number: '7', design: 'round', parts }],
  })
  await writeFile(join(data(), 'journal', 'shed.jsonl'), `${[add, ...more].join('\n')}\n`)
}

test('nothing is due of new gear: exit 0', async () => {
  await journal()
  expect(await potwright('due', '--data', data())).toMatchObject({
    code: 0,
    out: 'Nothing is due on 2026-05-01.\n',
    error: '',
  })
})

test('a rope found bad is due and on the shopping list: exit 1, as text and as JSON, and nothing is written', async () => {
  await journal(line(2, '2026-04-20T08:00:00.000Z', { kind: 'inspect', part: 'rope', grade: 4 }))
  const text = await potwright('due', '--data', data(), '--budget', '20')
  expect(text.code).toBe(1)
  expect(text.out).toContain(
    '2026-05-01  replace  pot 7, rope: The last inspection found a reason to discard it.',
  )
  expect(text.out).toContain('rope-pp-8mm: 20 m, 18.00')
  expect(text.out).toContain('On this budget first (18 in all):')
  const json = JSON.parse((await potwright('due', '--data', data(), '--json')).out) as {
    due: { number: string }[]
    shopping: { total: number }
  }
  expect(json.due).toMatchObject([{ action: 'replace', number: '7', kind: 'rope', decision: 'replace' }])
  expect(json.shopping.total).toBe(18)
  expect(await readdir(data())).toEqual(['journal'])
})

test('on an earlier day the rope was not due yet, a season later it is to be looked at', async () => {
  await journal()
  expect((await potwright('due', '--data', data(), '--on', '2026-04-10')).code).toBe(0)
  const later = await potwright('due', '--data', data(), '--on', '2027-03-20')
  expect(later.code).toBe(1)
  expect(later.out).toMatch(/inspect|replace/)
})

test('bad usage is refused: exit 2, the field named, nothing printed', async () => {
  await journal()
  const refused = await potwright('due', '--data', data(), '--on', 'spring')
  expect(refused).toMatchObject({ code: 2, out: '' })
  expect(refused.error).toContain('[on]')
  expect((await potwright('due', '--data', join(data(), 'none'))).error).toContain('[data]')
  expect((await potwright('due', '--data', data(), '--budget', 'lots')).error).toContain('[budget]')
})

test('figures set on this machine count: a shorter usual life makes more due', async () => {
  const ties = [{ id: 'ties', kind: 'ties', material: 'black', installedOn: '2026-04-01' }]
  await journal(
    line(2, '2026-04-01T09:00:00.000Z', {
      kind: 'add-pots',
      pots: [{ pot: 'q', number: '8', design: 'round', parts: ties }],
    }),
  )
  const home = join(data(), 'home')
  const at = (assumptions: object) =>
    writeFile(
      join(data(), 'settings', 'm.json'),
      JSON.stringify({ format: 'potwright/settings', version: 1, assumptions }),
    )
  await mkdir(home)
  await mkdir(join(data(), 'settings'))
  await writeFile(
    join(home, 'machine.json'),
    JSON.stringify({ format: 'potwright/machine', version: 1, id: 'm', name: 'Shed' }),
  )
  await at({})
  const env = { POTWRIGHT_HOME: home }
  expect((await potwrightIn(env, 'due', '--data', data())).code).toBe(0)
  await at({ tiesBlackLife: 4 })
  expect((await potwrightIn(env, 'due', '--data', data())).out).toContain('pot 8, ties')
})
