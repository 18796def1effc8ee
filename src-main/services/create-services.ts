import { access, constants, mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { DocumentFolder, type FolderOptions } from '@main/storage/document-folder'
import type { Disk } from '@main/storage/durable-write'
import type { Machine } from '@main/storage/machine'
import { SingleDocument } from '@main/storage/single-document'
import { Journal } from '@main/storage/journal'
import { BackupArchive } from '@main/storage/backup-archive'
import { PackFolder } from '@main/storage/pack-folder'
import { PhotoFolder } from '@main/storage/photo-folder'
import { asResult, diskError } from '@main/storage/storage-fault'
import type { KeptDocument } from '@main/storage/stored-document'
import type { ChangedSubject } from '@shared/contract/bridge'
import type { Handlers } from '@shared/contract/contract'
import { type OwnMaterials, OwnMaterialsSchema } from '@shared/schema/materials'
import { defaultSettings, SettingsSchema } from '@shared/schema/settings'
import { PotSchema } from '@shared/schema/pot'
import { WaterSchema } from '@shared/schema/water'
import { withOwnMaterials } from '@shared/design/materials/built-in'
import { coefficientsWith } from '@shared/physics/coefficients'
import { ok } from '@shared/units/result'
import { appHandlers, type Host } from './app'
import { atIntervals } from './at-intervals'
import { BackupService } from './backup-service'
import { backupHandlers } from './backup'
import { noDemo } from './demo/demo-switch'
import { journalHandlers } from './journal'
import { lockerHandlers, photoHandlers } from './locker'
import { LockerBook } from './locker-book'
import { materialHandlers } from './materials'
import { packHandlers } from './packs'
import { rulesInUse } from './packs-in-use'
import { potHandlers } from './pots'
import { printingHandlers } from './printing'
import { settingsHandlers } from './settings'
import { stationHandlers } from './stations/handlers'
import { waterHandlers } from './waters'
import { type Listener, Watches } from './watches'

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
  /** Calls the listener when something on disk changed by another hand, or for another page. */
  readonly onNotice: (listener: Listener) => () => void
  /** Makes the backup of the day unless there is one. */
  readonly dailyBackup: () => Promise<void>
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
  const settings = await SingleDocument.open(
    join(dataFolder, 'settings', `${machine.id}.json`),
    { schema: SettingsSchema, migrations: [], called: 'settings file' },
    defaultSettings,
    now,
    disk,
  )
  const settingsWritten = await watches.watch('settings', 'settings', () => settings.reload())
  const materials = await SingleDocument.open<OwnMaterials>(
    join(dataFolder, 'materials.json'),
    { schema: OwnMaterialsSchema, migrations: [], called: 'materials file' },
    { format: 'potwright/materials', version: 1 },
    now,
    disk,
  )
  const materialsWritten = await watches.watch('materials', '.', () => materials.reload())
  const packs = new PackFolder(dataFolder, await watches.watch('packs'), disk)
  const journal = new Journal({
    dataFolder,
    machine: machine.id,
    now,
    newId,
    onWritten: await watches.watch('journal'),
    ...(disk ? { disk } : {}),
  })
  const photos = new PhotoFolder(dataFolder, newId, disk)
  const lockerParts = {
    locker: new LockerBook(journal, now),
    photos,
    newId,
    sources: {
      now,
      overrides: () => settings.current.assumptions ?? {},
      around: async () => ({
        designs: await documentsIn(pots),
        waters: await documentsIn(waters),
        trip: settings.current.trip,
        rules: await rulesInUse(packs),
        materials: withOwnMaterials(materials.current),
        coefficients: coefficientsWith(settings.current.coefficients ?? {}),
      }),
    },
  }
  const backups = new BackupService({
    archive: new BackupArchive(join(dataFolder, 'backups'), now, disk),
    holdings: { pots, waters, packs, materials, settings, journal, photos },
    machine: machine.name,
    now,
    tell: atIntervals((done, of) => watches.tell({ kind: 'progress', done, of })),
  })

  return {
    handlers: {
      ...potHandlers(pots, newId),
      ...waterHandlers(waters, newId),
      ...stationHandlers(),
      ...journalHandlers(journal),
      ...lockerHandlers(lockerParts),
      ...photoHandlers(lockerParts),
      ...materialHandlers(materials, () => materialsWritten(materials.fileName)),
      ...packHandlers(packs),
      ...settingsHandlers(settings, () => settingsWritten(settings.fileName)),
      ...backupHandlers(backups, newId),
      ...printingHandlers(host.printer),
      ...noDemo,
      ...appHandlers({ host, dataFolder, machine, now, readOnly }),
    },
    dailyBackup: async () => {
      if (readOnly !== undefined) return
      const made = await asResult(async () => ok(await backups.daily()))
      if (!made.ok)
        watches.tell({ kind: 'trouble', message: `No backup was made today. ${made.error.message}` })
      else if (made.value.length > 0)
        watches.tell({
          kind: 'trouble',
          message: `The backup of today is without what cannot be read: ${made.value.join('; ')}.`,
        })
    },
    onNotice: (listener) => watches.onNotice(listener),
    close: () => watches.close(),
  }
}

async function documentsIn<T extends KeptDocument>(folder: DocumentFolder<T>): Promise<T[]> {
  return (await folder.reader.contents()).documents.map(({ stored }) => stored.document)
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
