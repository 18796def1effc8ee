import type { Vector2 } from 'three'
import type { Stage } from './stage'

/** The picture at `scale` times its size on screen, with its words over it, as a PNG. The caller resizes back. */
export function pictureOf(
  stage: Stage,
  size: Vector2,
  scale: number,
  drawWords: (pen: CanvasRenderingContext2D) => void,
): Promise<Blob> {
  const sheet = document.createElement('canvas')
  sheet.width = size.x * scale
  sheet.height = size.y * scale
  const pen = sheet.getContext('2d')
  if (!pen) return Promise.reject(new Error('pictureOf: no canvas to draw on'))
  const words = document.createElement('canvas')
  words.width = sheet.width
  words.height = sheet.height
  const wordPen = words.getContext('2d')
  wordPen?.scale(scale, scale)
  if (wordPen) drawWords(wordPen)

  stage.resize(size.x, size.y, scale)
  stage.renderer.render(stage.scene, stage.camera)
  // Read in the same turn as it was drawn: the drawing buffer is not kept.
  pen.drawImage(stage.renderer.domElement, 0, 0)
  pen.drawImage(words, 0, 0)
  return new Promise((resolve, reject) => {
    sheet.toBlob((blob) => {
      if (blob) resolve(blob)
      else reject(new Error('pictureOf: the browser made no picture'))
    }, 'image/png')
  })
}
