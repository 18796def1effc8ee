import type { Disk } from '@main/storage/durable-write'
import { createServices, type ServiceOptions } from './create-services'

/** Test support: the services on one folder, as one machine sees it, with ids that count up. */
export function openTestServices(
  dataFolder: string,
  machine = 'shed',
  more: Partial<ServiceOptions> & { disk?: Disk } = {},
) {
  let count = 0
  return createServices({
    dataFolder,
    machine: { id: machine, name: `${machine} computer` },
    now: () => new Date('2026-12-05T10:00:00Z'),
    newId: () => `new-${machine}-${++count}`,
    host: {
      edition: 'browser',
      version: '1.2.3',
      runtime: {},
      licences: () => Promise.resolve([]),
      showMenu: () => undefined,
      flushed: () => undefined,
    },
    ...more,
  })
}
