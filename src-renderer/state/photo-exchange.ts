import { chooseFiles } from './file-exchange'

/** A photo is kept no wider or higher than this; damage is seen well enough, and the data folder stays small. */
const mostPixels = 2000
const quality = 0.85

/** Lets the reader choose photos, or take one where the machine has a camera. */
export const askForPhotos = () => chooseFiles('image/jpeg,image/png,image/webp,image/*')

/**
 * A photo as it is kept: drawn again at a reasonable size, which also leaves out where and when it was taken.
 *
 * @returns base64 of a JPEG; undefined where the file is no picture
 */
export async function photoAsBase64(file: File): Promise<string | undefined> {
  const picture = await createImageBitmap(file).catch(() => undefined)
  if (!picture) return undefined
  const scale = Math.min(1, mostPixels / Math.max(picture.width, picture.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.round(picture.width * scale)
  canvas.height = Math.round(picture.height * scale)
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height)
  picture.close()
  const [, base64] = canvas.toDataURL('image/jpeg', quality).split(',')
  return base64
}
