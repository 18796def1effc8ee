import { locker } from '@renderer/state/locker.svelte'

/** Reads the locker where that was not done yet, and has every part judged; for an effect. */
export function judgedLocker(): void {
  if (!locker.loaded) void locker.load()
  else locker.judge()
}
