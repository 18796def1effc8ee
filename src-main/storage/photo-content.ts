import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import type { BackupPhoto } from '@shared/schema/backup'
import { StorageFault } from './storage-fault'

/** A photo that cannot be read, or is not what it was when its backup was made. */
export class DamagedPhoto extends StorageFault {
  constructor(readonly photo: BackupPhoto) {
    super({ code: 'invalid', message: `The photo ${photo.file} is damaged.` })
  }
}

/** What is in a file, which is opened only when the first of it is asked for. */
export async function* bytesOf(path: string): AsyncGenerator<Uint8Array> {
  yield* createReadStream(path) as AsyncIterable<Buffer>
}

export async function fingerprintOf(path: string): Promise<Pick<BackupPhoto, 'bytes' | 'sha256'>> {
  const hash = createHash('sha256')
  let bytes = 0
  for await (const part of bytesOf(path)) {
    hash.update(part)
    bytes += part.length
  }
  return { bytes, sha256: hash.digest('hex') }
}

/**
 * The bytes of a source as they come.
 *
 * @throws DamagedPhoto at their end, where they are not those of the photo, or where the source fails
 */
export async function* intact(
  source: AsyncIterable<Uint8Array>,
  photo: BackupPhoto,
): AsyncGenerator<Uint8Array> {
  const hash = createHash('sha256')
  let bytes = 0
  try {
    for await (const part of source) {
      hash.update(part)
      bytes += part.length
      if (bytes > photo.bytes) break // whoever made it longer may have made it endless
      yield part
    }
  } catch {
    throw new DamagedPhoto(photo)
  }
  if (bytes !== photo.bytes || hash.digest('hex') !== photo.sha256) throw new DamagedPhoto(photo)
}
