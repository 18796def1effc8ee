import type { AppError } from '@shared/units/result'
import { err, type Result } from '@shared/units/result'

/** An `AppError` on its way through promise-based code that can only throw; `asResult` turns it back. */
export class StorageFault extends Error {
  constructor(readonly appError: AppError) {
    super(appError.message)
    this.name = 'StorageFault'
  }
}

const reasons: Record<string, { code: AppError['code']; message: string }> = {
  ENOSPC: { code: 'storage', message: 'The disk is full. Nothing was lost; free some space and save again.' },
  EDQUOT: { code: 'storage', message: 'The disk is full. Nothing was lost; free some space and save again.' },
  EROFS: { code: 'read_only', message: 'The data folder can only be read. Nothing was saved or lost.' },
  EACCES: {
    code: 'read_only',
    message: 'Potwright may not write to the data folder. Nothing was saved or lost.',
  },
  EPERM: {
    code: 'read_only',
    message: 'Potwright may not write to the data folder. Nothing was saved or lost.',
  },
  EBUSY: {
    code: 'storage',
    message: 'Another program holds the file. Nothing was lost; try again in a moment.',
  },
  ENOTDIR: { code: 'storage', message: 'The data folder is not a folder. Choose another one.' },
  EIO: { code: 'storage', message: 'The disk reported an error. The file on it was left as it was.' },
}

/** What a disk did, as an error for a person; anything that is not the disk's doing is a bug and is thrown on. */
export function diskError(thrown: unknown): AppError {
  if (thrown instanceof StorageFault) return thrown.appError
  const code = errnoCode(thrown)
  if (code === undefined) throw thrown
  return (
    reasons[code] ?? {
      code: 'storage',
      message: `The disk refused (${code}). The file on it was left as it was.`,
    }
  )
}

export function errnoCode(thrown: unknown): string | undefined {
  if (!(thrown instanceof Error) || !('code' in thrown)) return undefined
  return typeof thrown.code === 'string' && thrown.code.startsWith('E') ? thrown.code : undefined
}

export const isMissing = (thrown: unknown) => errnoCode(thrown) === 'ENOENT'

/** Runs work on the disk and returns what went wrong with it as a value. */
export async function asResult<T>(work: () => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await work()
  } catch (thrown) {
    return err(diskError(thrown))
  }
}
