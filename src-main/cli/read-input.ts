import { readFile } from 'node:fs/promises'
import { type DocumentKind, parseDocument } from '@main/storage/document-file'
import { PotSchema, type Pot } from '@shared/schema/pot'
import { TripSchema, type Trip } from '@shared/schema/trip'
import { WaterSchema, type Water } from '@shared/schema/water'
import { CommandRefused, type Terminal } from './command'

const potKind: DocumentKind<Pot> = { schema: PotSchema, migrations: [], called: 'pot design' }
const waterKind: DocumentKind<Water> = { schema: WaterSchema, migrations: [], called: 'water' }
const tripKind: DocumentKind<Trip> = { schema: TripSchema, migrations: [], called: 'trip' }

export const readPot = (path: string, terminal: Terminal) => readInput(path, potKind, terminal)
export const readWater = (path: string, terminal: Terminal) => readInput(path, waterKind, terminal)
export const readTrip = (path: string, terminal: Terminal) => readInput(path, tripKind, terminal)

/** Reads a document named on the command line, `-` being standard input; what does not fit is refused by its path. */
async function readInput<T>(path: string, kind: DocumentKind<T>, terminal: Terminal): Promise<T> {
  const read = parseDocument(await textOf(path, terminal), kind)
  if (!read.ok) throw CommandRefused.from(read.error, path)
  return read.value
}

/** The text of a file, or of standard input for `-`. */
export async function textOf(path: string, terminal: Terminal): Promise<string> {
  if (path === '-') return terminal.readStandardInput()
  try {
    return await readFile(path, 'utf8')
  } catch (thrown) {
    throw new CommandRefused(
      `${path} could not be read: ${thrown instanceof Error ? thrown.message : 'unknown'}`,
    )
  }
}
