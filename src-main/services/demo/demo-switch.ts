import { mkdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Services } from '@main/services/create-services'
import type { Listener } from '@main/services/watches'
import { asResult, isMissing } from '@main/storage/storage-fault'
import { demoCrews, type DemoCrew } from '@shared/contract/demo'
import type { Channel, Handlers, Subject } from '@shared/contract/contract'
import { err, ok, type Result } from '@shared/units/result'
import type { Crew } from './crew'
import { fillDemo } from './fill'
import { northCrew } from './north'
import { southCrew } from './south'

const crews: Readonly<Record<DemoCrew, Crew>> = { north: northCrew, south: southCrew }

export interface DemoOptions {
  /** The reader's own. */
  readonly own: Services
  /** A folder outside the reader's data, so that no backup and no sync takes it along. */
  readonly folder: string
  /** Opens services on another data folder. */
  readonly open: (dataFolder: string) => Promise<Services>
  readonly now: () => Date
}

/** No demo to be had: for services that stand alone. */
export const noDemo: Handlers<Subject<'demo'>> = {
  'demo:state': () => Promise.resolve(ok({})),
  'demo:show': () => Promise.resolve(err({ code: 'unavailable', message: 'There is no demo here.' })),
  'demo:remove': () => Promise.resolve(ok({})),
}

/**
 * The reader's services, with the demo in their place while it is shown: every call is answered from the one or the
 * other, never from both.
 */
export async function withDemo(options: DemoOptions): Promise<Services> {
  const { own, folder, open, now } = options
  const note = join(folder, 'shown')
  const listeners = new Set<Listener>()
  let shown: { crew: DemoCrew; services: Services } | undefined
  const current = () => shown?.services ?? own

  const listen = (services: Services) =>
    services.onNotice((notice, known) => {
      if (current() === services) for (const listener of listeners) listener(notice, known)
    })
  const put = (crew: DemoCrew, services: Services) => {
    shown?.services.close()
    shown = { crew, services }
    listen(services)
  }
  listen(own)

  async function show(crew: DemoCrew): Promise<Result<{ crew?: DemoCrew }>> {
    if (shown?.crew === crew) return ok({ crew })
    const place = join(folder, crew)
    await rm(place, { recursive: true, force: true })
    await mkdir(place, { recursive: true })
    const services = await open(place)
    const filled = await fillDemo(services, crews[crew], now())
    if (!filled.ok) {
      services.close()
      return filled
    }
    await writeFile(note, crew)
    put(crew, services)
    return ok({ crew })
  }

  async function remove(): Promise<Result<{ crew?: DemoCrew }>> {
    shown?.services.close()
    shown = undefined
    await rm(folder, { recursive: true, force: true })
    return ok({})
  }

  const left = await noteOf(note)
  if (left) put(left, await open(join(folder, left)))

  const demo: Handlers<Subject<'demo'>> = {
    'demo:state': () => Promise.resolve(ok(shown ? { crew: shown.crew } : {})),
    'demo:show': ({ crew }) => asResult(() => show(crew)),
    'demo:remove': () => asResult(remove),
  }
  return {
    handlers: {
      ...switched(own.handlers, () => current().handlers),
      // The folder that is chosen is the reader's, whatever is shown.
      'app:choose-folder': own.handlers['app:choose-folder'],
      ...demo,
    },
    onNotice: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    dailyBackup: () => own.dailyBackup(),
    close: () => {
      shown?.services.close()
      own.close()
    },
  }
}

/** Handlers that ask which ones to use each time they are called. */
function switched(channels: Handlers, current: () => Handlers): Handlers {
  const route = <C extends Channel>(channel: C) => [
    channel,
    (request: Parameters<Handlers[C]>[0]) => (current()[channel] as (asked: unknown) => unknown)(request),
  ]
  return Object.fromEntries((Object.keys(channels) as Channel[]).map(route)) as unknown as Handlers
}

/** The crew that was shown when the program last ended, if it was. */
async function noteOf(path: string): Promise<DemoCrew | undefined> {
  try {
    const text = (await readFile(path, 'utf8')).trim()
    return demoCrews.find((crew) => crew === text)
  } catch (thrown) {
    if (isMissing(thrown)) return undefined
    throw thrown
  }
}
