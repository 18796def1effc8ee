import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { samplePot } from '@main/storage/sample-pots'
import { contract } from '@shared/contract/contract'
import { answer } from './answer'
import { servicesInTests } from './services-in-tests'

const { data, services } = servicesInTests()

describe('calls from outside', () => {
  test.each([
    ['an unknown channel', 'pots:burn', {}, 'not_found'],
    ['a name every object has', 'toString', {}, 'not_found'],
    ['a request without its fields', 'pots:get', {}, 'invalid'],
    ['a path for an id', 'pots:get', { id: '../settings' }, 'invalid'],
    ['a field too many', 'pots:get', { id: 'a', path: '/x' }, 'invalid'],
    ['no object', 'pots:list', null, 'invalid'],
    ['a negative size', 'pots:save', { document: samplePot('a', { catchKg: -1 }) }, 'invalid'],
  ])('%s is refused', async (_, channel, request, code) => {
    expect(await answer((await services()).handlers, channel, request)).toMatchObject({
      ok: false,
      error: { code },
    })
  })

  test('what is refused names the field and changes nothing', async () => {
    const reply = await answer((await services()).handlers, 'pots:save', {
      document: samplePot('a', { catchKg: -1 }),
    })
    expect(reply).toMatchObject({ error: { path: 'document.catchKg', message: /at least 0/ } })
    expect(await readdir(join(data(), 'pots'))).toEqual([])
  })

  test('every channel of the contract is answered for', async () => {
    const { handlers } = await services()
    expect(Object.keys(handlers).sort()).toEqual(Object.keys(contract).sort())
  })
})
