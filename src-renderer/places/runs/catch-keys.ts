import type { Catch } from '@shared/journal/locker-state'

export type CatchKind = keyof Catch

/** One key counts one more. */
export const catchKeys: Readonly<Record<string, CatchKind | undefined>> = {
  k: 'kept',
  u: 'undersized',
  f: 'female',
  o: 'other',
}
