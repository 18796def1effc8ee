import { bench } from './bench.svelte'
import { waterDesk } from './water-desk.svelte'

const desks = [bench, waterDesk]

/** Saves now what lies open and still waits to be saved; whether all of it could be. */
export async function saveOpenWork(): Promise<boolean> {
  await Promise.all(desks.map(({ autosave }) => autosave.flush()))
  return !hasUnsavedWork()
}

/** Whether something lies open that could not be saved when it was tried. */
export const hasUnsavedWork = () => desks.some(({ autosave }) => autosave.state === 'failed')
