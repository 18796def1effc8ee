import type { InstalledPart } from '@shared/schema/gear'
import type { JournalEvent } from '@shared/schema/journal'

/** A made-up fleet's history: so many pots, set and hauled in turn until there are so many events. */
export function fleetHistory(pots: number, events: number): JournalEvent[] {
  const history: JournalEvent[] = []
  const startMs = Date.parse('2020-01-01T06:00:00.000Z')
  const write = (minute: number, body: Record<string, unknown>) => {
    const seq = history.length + 1
    const at = new Date(startMs + minute * 60_000).toISOString()
    history.push({ version: 1, id: `e${seq}`, machine: 'boat', seq, at, ...body } as JournalEvent)
  }
  write(0, { kind: 'add-pots', pots: Array.from({ length: pots }, (_, i) => newPot(i)) })
  for (let i = 0; history.length < events; i++) {
    const pot = `pot${i % pots}`
    const round = Math.floor(i / pots)
    if (round % 2 === 0)
      write(i + 10, {
        kind: 'set',
        pot,
        run: `run${round / 2}`,
        water: 'narrows',
        depthM: 12,
        bait: 'herring',
      })
    else
      write(i + 10, {
        kind: 'haul',
        pot,
        kept: i % 4,
        undersized: i % 3,
        female: i % 2,
        other: 0,
        baitLeft: 'some',
      })
  }
  return history
}

function newPot(i: number) {
  const kinds = [
    'rope',
    'netting',
    'bait-bag',
    'chafe',
    'release-cord',
    'frame',
    'float',
    'tag',
    'ties',
    'door-hook',
  ] as const
  const parts = kinds.map((kind): InstalledPart => ({
    id: `pot${i}-${kind}`,
    kind,
    installedOn: '2019-12-01',
    cost: 10,
  }))
  return { pot: `pot${i}`, number: String(i + 1), design: 'round', parts }
}
