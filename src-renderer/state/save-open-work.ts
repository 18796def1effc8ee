import { bench } from './bench.svelte'
import { waterDesk } from './water-desk.svelte'

/** Saves now what lies open and still waits to be saved. */
export async function saveOpenWork(): Promise<void> {
  await Promise.all([bench.autosave.flush(), waterDesk.autosave.flush()])
}
