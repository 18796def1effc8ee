import { PotSchema, type Pot } from '@shared/schema/pot'
import { DocumentFolder } from './document-folder'
import type { Disk } from './durable-write'

/* Test support: a small pot design and a folder of them. */

export const samplePot = (id: string, change: Partial<Pot> = {}): Pot => ({
  format: 'potwright/pot',
  version: 1,
  id,
  name: `Pot ${id}`,
  gearKind: 'pot',
  body: { shape: 'round', baseDiameterMm: 900, topDiameterMm: 900, heightMm: 320, folds: true, feet: 0 },
  ...change,
})

/** The folder of pots as one machine sees it. */
export const potFolder = (dataFolder: string, machine = 'shed', disk?: Disk) =>
  new DocumentFolder<Pot>({
    dataFolder,
    subject: 'pots',
    suffix: '.pot.json',
    kind: { schema: PotSchema, migrations: [], called: 'pot design' },
    machine: { id: machine, name: `${machine} computer` },
    now: () => new Date('2026-12-05T10:00:00Z'),
    ...(disk ? { disk } : {}),
  })
