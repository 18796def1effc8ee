import { starterPots } from '@shared/design/starter-pots'
import type { EventDraft, JournalEvent } from '@shared/schema/journal'
import type { Pot } from '@shared/schema/pot'
import type { Services } from '@main/services/create-services'
import { fleetHistory } from '../../samples/journal-years'

/* Data to measure on, written by the program's own services, as a user's would be. */

/** The most that one call takes. */
const perCall = 2000

/** A fleet of so many pots with a history of so many events, and one design. */
export async function writeFleet({ handlers }: Services, pots: number, events: number): Promise<void> {
  const [, standard] = starterPots
  if (!standard) throw new Error('there is no starting shape')
  await expectOk(handlers['pots:save']({ document: { ...standard, id: 'round' } }))
  const drafts = fleetHistory(pots, events).map(draftOf)
  for (let from = 0; from < drafts.length; from += perCall)
    await expectOk(handlers['journal:append']({ events: drafts.slice(from, from + perCall) }))
}

/** A history's event as it is asked for, without what the writer adds. */
function draftOf(event: JournalEvent): EventDraft {
  const added = ['version', 'id', 'machine', 'seq']
  return Object.fromEntries(Object.entries(event).filter(([field]) => !added.includes(field))) as EventDraft
}

/** The most twine that a design may have: the largest body in the finest mesh. */
export function densestPot(): Pot {
  const [, standard] = starterPots
  if (!standard?.netting) throw new Error('there is no starting shape')
  return {
    ...standard,
    id: 'densest',
    name: 'Densest mesh',
    body: {
      shape: 'round',
      baseDiameterMm: 3000,
      topDiameterMm: 3000,
      heightMm: 2000,
      folds: false,
      feet: 0,
    },
    netting: { ...standard.netting, barLengthMm: 5, twineDiameterMm: 0.3 },
  }
}

/** Puts a design on the Bench for the next start. */
export async function putOnBench({ handlers }: Services, pot: Pot): Promise<void> {
  await expectOk(handlers['pots:save']({ document: pot }))
  await expectOk(handlers['settings:set']({ set: { currentPot: pot.id } }))
}

async function expectOk(answer: Promise<{ ok: true } | { ok: false; error: { message: string } }>) {
  const given = await answer
  if (!given.ok) throw new Error(given.error.message)
}
