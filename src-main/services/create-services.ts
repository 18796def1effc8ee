import { access, constants, mkdir } from 'node:fs/promises'
import { DocumentFolder, type FolderOptions } from '@main/storage/document-folder'
import type { Disk } from '@main/storage/durable-write'
import type { Machine } from '@main/storage/machine'
import { SettingsFile } from '@main/storage/settings-file'
import { diskError } from '@main/storage/storage-fault'
import type { KeptDocument } from '@main/storage/stored-document'
import type { ChangedSubject, Notice } from '@shared/contract/bridge'
import type { Handlers } from '@shared/contract/contract'
import { PotSchema } from '@shared/schema/pot'
import { WaterSchema } from '@shared/schema/water'
import { appHandlers, type Host } from './app'
import { packHandlers } from './packs'
import { potHandlers } from './pots'
import { settingsHandlers } from './settings'
import { stationHandlers } from './stations/handlers'
import { waterHandlers } from './waters'
import { Watches } from './watches'

export interface ServiceOptions {
  readonly dataFolder: string
  readonly machine: Machine
  readonly now: () => Date
  readonly newId: () => string
  readonly host: Host
  /** Stands in for the real disk in tests of full and failing ones. */
  readonly disk?: Disk
}

export interface Services {
  readonly handlers: Handlers
  /** Calls the listener when something on disk changed by another hand. */
  readonly onNotice: (listener: (notice: Notice) => void) => () => void
  readonly close: () => void
}

/** Everything the program can do with its data, for whoever calls: the window, the browser edition, a test. */
export async function createServices(options: ServiceOptions): Promise<Services> {
  const { dataFolder, machine, now, newId, host, disk } = options
  const readOnly = await whyReadOnly(dataFolder)
  const watches = new Watches(dataFolder)

  const folderOf = async <T extends KeptDocument>(
    subject: ChangedSubject,
    suffix: string,
    kind: FolderOptions<T>['kind'],
  ) =>
    new DocumentFolder<T>({
      dataFolder,
      subject,
      suffix,
      kind,
      machine,
      now,
      onWritten: await watches.watch(subject),
      ...(disk ? { disk } : {}),
    })

  const pots = await folderOf('pots', '.pot.json', {
    schema: PotSchema,
    migrations: [],
    called: 'pot design',
  })
  const waters = await folderOf('waters', '.water.json', {
    schema: WaterSchema,
    migrations: [],
    called: 'water',
  })
  const settings = await SettingsFile.open(dataFolder, machine.id, now, disk)
  const settingsWritten = await watches.watch('settings', () => settings.reload())

  return {
    handlers: {
      ...potHandlers(pots, newId),
      ...waterHandlers(waters, newId),
      ...stationHandlers(),
      ...settingsHandlers(settings, () => settingsWritten(settings.fileName)),
      ...packHandlers(dataFolder, await watches.watch('packs'), disk),
      ...appHandlers({ host, dataFolder, machine, now, readOnly }),
    },
    onNotice: (listener) => watches.onNotice(listener),
    close: () => watches.close(),
  }
}

/** Tries the folder once at the start, so that the interface can say so before anything is typed. */
async function whyReadOnly(dataFolder: string): Promise<string | undefined> {
  try {
    await mkdir(dataFolder, { recursive: true })
    await access(dataFolder, constants.W_OK)
    return undefined
  } catch (thrown) {
    return diskError(thrown).message
  }
}
