import { join } from 'node:path'
import { packsInUse, type PackInUse } from '@main/services/packs-in-use'
import { chosenFolder } from '@main/storage/data-place'
import { parseDocument, readIfThere } from '@main/storage/document-file'
import { defaultDataFolder, homeFolder } from '@main/storage/home'
import { PackFolder } from '@main/storage/pack-folder'
import { readSettings } from '@main/storage/read-settings'
import { builtInMaterials, withOwnMaterials } from '@shared/design/materials/built-in'
import { fishingAssumptions } from '@shared/fishing/assumptions'
import { coefficientsWith } from '@shared/physics/coefficients'
import { withOverrides } from '@shared/schema/assumption'
import { type Materials, OwnMaterialsSchema } from '@shared/schema/materials'
import { CommandRefused, type Terminal } from './command'

/* What commands take from the user's data folder. Nothing is written there. */

/** The folder named, else the one chosen on this machine, else the usual one. */
export async function dataFolderOf(terminal: Terminal, named?: string): Promise<string> {
  const home = homeFolder(terminal.env, terminal.platform)
  return named ?? (await chosenFolder(home)) ?? defaultDataFolder(home)
}

/** The packs to judge by, with the user's own rules laid over them. */
export async function packsFor(terminal: Terminal, dataFolder?: string): Promise<PackInUse[]> {
  const folder = new PackFolder(await dataFolderOf(terminal, dataFolder), () => Promise.resolve())
  const { packs, problems } = await packsInUse(folder)
  for (const { message } of problems) terminal.writeError(`${message}\n`)
  return packs
}

/** What every model reckons with, the user's own figures in place of the shipped ones, as in the window. */
export async function figuresFor(terminal: Terminal, dataFolder?: string) {
  const { coefficients = {}, assumptions = {} } = await readSettings(
    homeFolder(terminal.env, terminal.platform),
    await dataFolderOf(terminal, dataFolder),
  )
  return {
    materials: await materialsFor(terminal, dataFolder),
    coefficients: coefficientsWith(coefficients),
    fishingFigures: withOverrides(fishingAssumptions, assumptions),
  }
}

/** The tables of materials, with the user's own rows. */
export async function materialsFor(terminal: Terminal, dataFolder?: string): Promise<Materials> {
  const path = join(await dataFolderOf(terminal, dataFolder), 'materials.json')
  const text = await readIfThere(path)
  if (text === undefined) return builtInMaterials
  const own = parseDocument(text, { schema: OwnMaterialsSchema, migrations: [], called: 'materials file' })
  if (!own.ok) throw CommandRefused.from(own.error, path)
  return withOwnMaterials(own.value)
}
