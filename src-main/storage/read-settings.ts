import { join } from 'node:path'
import { defaultSettings, type Settings, SettingsSchema } from '@shared/schema/settings'
import { parseDocument, readIfThere } from './document-file'
import { knownMachine } from './machine'

/** This machine's settings in a data folder, for reading only; the defaults where there are none to be read. */
export async function readSettings(home: string, dataFolder: string): Promise<Settings> {
  const machine = await knownMachine(home)
  const text = machine && (await readIfThere(join(dataFolder, 'settings', `${machine.id}.json`)))
  const read =
    text === undefined
      ? undefined
      : parseDocument(text, { schema: SettingsSchema, migrations: [], called: 'settings file' })
  return read?.ok ? read.value : defaultSettings
}
