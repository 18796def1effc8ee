/** What a user, a file or a disk can get wrong is a value; a bug throws. */
export type Result<T, E = AppError> = { ok: true; value: T } | { ok: false; error: E }

type ErrorCode =
  | 'invalid'
  | 'not_found'
  | 'storage'
  | 'newer_version'
  | 'conflict'
  | 'read_only'
  | 'unavailable'
  | 'cancelled'

export interface AppError {
  code: ErrorCode
  /** One or two plain sentences: what was not done, that nothing was lost, what to do. */
  message: string
  /** Where in the document the trouble is, as `rope.lengthM` or `entrances.0.widthMm`. */
  path?: string
}

export const ok = <T>(value: T): Result<T, never> => ({ ok: true, value })
export const err = <E>(error: E): Result<never, E> => ({ ok: false, error })
