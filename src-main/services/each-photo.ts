import { DamagedPhoto } from '@main/storage/photo-content'
import type { BackupPhoto } from '@shared/schema/backup'

/**
 * Does something with photos, one after the other, and tells how far it is.
 *
 * @returns those that are damaged: they stop nothing
 */
export async function eachPhoto(
  photos: readonly BackupPhoto[],
  work: (photo: BackupPhoto) => Promise<void>,
  tell: (done: number, of: number) => void,
): Promise<BackupPhoto[]> {
  const damaged: BackupPhoto[] = []
  for (const [done, photo] of photos.entries()) {
    tell(done, photos.length)
    try {
      await work(photo)
    } catch (thrown) {
      if (!(thrown instanceof DamagedPhoto)) throw thrown
      damaged.push(photo)
    }
  }
  return damaged
}
