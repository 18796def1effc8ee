import type { Services } from '@main/services/create-services'
import type { Result } from '@shared/units/result'
import { ok } from '@shared/units/result'
import type { Crew } from './crew'
import { demoSeason } from './season'

/** Writes everything of a crew through the services, as the page would; the first refusal stops it. */
export async function fillDemo({ handlers }: Services, crew: Crew, now: Date): Promise<Result<undefined>> {
  const written: Result<unknown>[] = []
  const write = async (one: Promise<Result<unknown>>) => written.push(await one)
  for (const document of crew.designs) await write(handlers['pots:save']({ document }))
  for (const document of crew.waters) await write(handlers['waters:save']({ document }))
  await write(handlers['locker:record']({ events: demoSeason(crew, now) }))
  await write(
    handlers['settings:set']({
      set: {
        units: crew.units,
        trip: { ...crew.trip, date: now.toISOString().slice(0, 10) },
        currentPot: crew.onBench.pot,
        currentWater: crew.onBench.water,
        started: true,
      },
    }),
  )
  return written.find((one): one is Extract<typeof one, { ok: false }> => !one.ok) ?? ok(undefined)
}
