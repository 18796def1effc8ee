import { join } from 'node:path'
import { openTestServices } from '@main/services/open-test-services'
import type { Services } from '@main/services/create-services'
import { samplePot } from '@main/storage/sample-pots'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { readdir } from 'node:fs/promises'
import { demoCrews } from '@shared/contract/demo'
import type { Result } from '@shared/units/result'
import { afterEach, expect, test } from 'vitest'
import { withDemo } from './demo-switch'
import { northCrew } from './north'
import { southCrew } from './south'

const folder = temporaryFolder()
const opened: Services[] = []
afterEach(() => {
  for (const one of opened.splice(0)) one.close()
})

async function start() {
  const services = await withDemo({
    own: await openTestServices(join(folder(), 'data')),
    folder: join(folder(), 'demo'),
    open: (dataFolder) => openTestServices(dataFolder),
    now: () => new Date('2026-12-05T10:00:00Z'),
  })
  opened.push(services)
  return services
}

const value = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.error.message)
  return result.value
}
const names = async ({ handlers }: Services) =>
  value(await handlers['pots:list']({})).items.map(({ document }) => document.name)

test('the demo stands in place of the reader’s data, which it never touches, and goes in one action', async () => {
  const services = await start()
  value(await services.handlers['pots:save']({ document: samplePot('mine') }))
  expect(value(await services.handlers['demo:show']({ crew: 'north' }))).toEqual({ crew: 'north' })
  expect(await names(services)).toHaveLength(northCrew.designs.length)
  value(await services.handlers['pots:save']({ document: samplePot('made-in-the-demo') }))

  expect(value(await services.handlers['demo:remove']({}))).toEqual({})
  expect(await names(services)).toEqual(['Pot mine'])
  expect(await readdir(folder())).toEqual(['data'])
  const state = value(await services.handlers['locker:state']({})).state
  expect(Object.keys(state.pots)).toEqual([])
})

test('a demo left open is shown again at the next start, and its crew can be changed', async () => {
  const first = await start()
  value(await first.handlers['demo:show']({ crew: 'south' }))
  first.close()
  const second = await start()
  expect(value(await second.handlers['demo:state']({}))).toEqual({ crew: 'south' })
  expect(await names(second)).toHaveLength(southCrew.designs.length)
  value(await second.handlers['demo:show']({ crew: 'north' }))
  expect(value(await second.handlers['settings:get']({})).units).toBe('imperial')
})

test.each(demoCrews)(
  'the season of crew %s has no event that does not fit, and a missed float',
  async (crew) => {
    const services = await start()
    value(await services.handlers['demo:show']({ crew }))
    const { state, trouble } = value(await services.handlers['locker:state']({}))
    expect([state.problems, trouble]).toEqual([[], []])
    const pots = Object.values(state.pots)
    expect(pots).toHaveLength(8)
    expect(pots.filter((pot) => pot.status === 'lost')).toHaveLength(1)
    expect(state.missing.length).toBeGreaterThan(0)
    expect(pots[0]?.been.hauls).toBeGreaterThan(20)
  },
)

test('every station that the demo names is there', async () => {
  const services = await start()
  for (const water of [...northCrew.waters, ...southCrew.waters]) {
    const tide = water.tide?.source === 'station' ? { tide: water.tide.id } : {}
    const current = water.current?.source === 'station' ? { current: water.current.id } : {}
    value(await services.handlers['stations:constants']({ ...tide, ...current }))
  }
})
