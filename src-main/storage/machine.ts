import { hostname } from 'node:os'
import { join } from 'node:path'
import * as v from 'valibot'
import { id } from '@shared/schema/fields'
import { documentText, parseDocument, readIfThere } from './document-file'
import { writeDurably } from './durable-write'
import { setAside } from './set-aside'

/*
 * Which machine this is. Kept outside the data folder: that one may be shared by a sync engine, and two
 * machines with one identity would write to one journal.
 */

const MachineSchema = v.strictObject({
  format: v.literal('potwright/machine'),
  version: v.literal(1),
  id,
  name: v.pipe(v.string(), v.minLength(1), v.maxLength(60)),
})

const kind = { schema: MachineSchema, migrations: [], called: 'machine file' }

export interface Machine {
  readonly id: string
  readonly name: string
}

/** This machine's identity if it has one already; for reading only. */
export async function knownMachine(home: string): Promise<Machine | undefined> {
  const text = await readIfThere(join(home, 'machine.json'))
  const kept = text === undefined ? undefined : parseDocument(text, kind)
  return kept?.ok ? { id: kept.value.id, name: kept.value.name } : undefined
}

/** This machine's identity, made on first use. One that cannot be read is set aside for a fresh one. */
export async function thisMachine(home: string, newId: () => string, now: () => Date): Promise<Machine> {
  const path = join(home, 'machine.json')
  const text = await readIfThere(path)
  if (text !== undefined) {
    const machine = await knownMachine(home)
    if (machine) return machine
    await setAside(path, now())
  }
  const machine = { id: newId(), name: hostname().slice(0, 60) || 'This machine' }
  await writeDurably(path, documentText({ format: 'potwright/machine', version: 1, ...machine }))
  return machine
}
