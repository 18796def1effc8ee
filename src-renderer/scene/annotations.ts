import type { Vector3 } from 'three'
import { type Camera } from 'three'
import { placeTags, type Tag } from './tag-layout'
import type { Palette } from './palette'
import { failsMark } from './state-mark-path'

/* Words and thin lines over the picture, on a canvas of their own, so that a saved picture carries them too. */

export interface LabelNote {
  readonly at: Vector3
  readonly text: string
  /** With the fails mark, or a plain name. */
  readonly mark: 'fails' | 'none'
}

interface DimensionNote {
  readonly from: Vector3
  readonly to: Vector3
  readonly text: string
}

export interface Notes {
  /** Closed dashed outlines on the bottom, as where the pot stood. */
  readonly outlines: readonly (readonly Vector3[])[]
  readonly labels: readonly LabelNote[]
  readonly dimensions: readonly DimensionNote[]
}

const textPx = 13
const heavyPx = 600

export function drawNotes(
  pen: CanvasRenderingContext2D,
  camera: Camera,
  notes: Notes,
  palette: Palette,
  width: number,
  height: number,
): void {
  pen.clearRect(0, 0, width, height)
  const onScreen = (point: Vector3) => {
    const p = point.clone().project(camera)
    return { x: ((p.x + 1) / 2) * width, y: ((1 - p.y) / 2) * height, hidden: p.z > 1 }
  }
  pen.strokeStyle = palette.fails
  pen.lineWidth = 1.5
  pen.setLineDash([5, 5])
  for (const outline of notes.outlines) {
    pen.beginPath()
    for (const { x, y } of outline.map(onScreen)) pen.lineTo(x, y)
    pen.closePath()
    pen.stroke()
  }
  pen.setLineDash([])
  for (const note of notes.dimensions)
    drawDimension(pen, onScreen(note.from), onScreen(note.to), note.text, palette)
  pen.font = `${String(heavyPx)} ${String(textPx)}px ${palette.font}`
  const tags = notes.labels
    .map((label) => ({ label, at: onScreen(label.at) }))
    .filter(({ at }) => !at.hidden)
    .map(({ label, at }): Tag & { mark: LabelNote['mark'] } => ({
      x: at.x,
      y: at.y,
      text: label.text,
      mark: label.mark,
      width: pen.measureText(label.text).width + (label.mark === 'fails' ? 40 : 20),
      height: 26,
    }))
  for (const tag of placeTags(tags, width, height)) drawTag(pen, tag, palette)
}

function drawTag(
  pen: CanvasRenderingContext2D,
  tag: Tag & { mark: LabelNote['mark']; left: number; top: number },
  palette: Palette,
): void {
  const line = tag.mark === 'fails' ? palette.fails : palette.inkQuiet
  const joinX = Math.min(tag.left + tag.width, Math.max(tag.left, tag.x))
  const joinY = tag.top + tag.height / 2 < tag.y ? tag.top + tag.height : tag.top
  const beside = tag.y >= tag.top && tag.y <= tag.top + tag.height
  pen.strokeStyle = line
  pen.lineWidth = 1.25
  pen.beginPath()
  pen.moveTo(tag.x, tag.y)
  pen.lineTo(
    beside && tag.x > tag.left ? tag.left + tag.width : joinX,
    beside ? tag.top + tag.height / 2 : joinY,
  )
  pen.stroke()
  pen.fillStyle = line
  pen.beginPath()
  pen.arc(tag.x, tag.y, 3, 0, Math.PI * 2)
  pen.fill()

  pen.fillStyle = palette.paper
  pen.beginPath()
  pen.roundRect(tag.left, tag.top, tag.width, tag.height, 5)
  pen.fill()
  pen.stroke()
  let x = tag.left + 10
  if (tag.mark === 'fails') {
    pen.save()
    const scale = 14 / failsMark.box
    pen.translate(tag.left + 9, tag.top + 6)
    pen.scale(scale, scale)
    pen.lineWidth = failsMark.width
    pen.lineCap = 'round'
    pen.stroke(new Path2D(failsMark.path))
    pen.restore()
    x = tag.left + 30
  }
  pen.fillStyle = palette.ink
  pen.textBaseline = 'middle'
  pen.textAlign = 'left'
  pen.fillText(tag.text, x, tag.top + tag.height / 2 + 0.5)
}

interface Spot {
  readonly x: number
  readonly y: number
  readonly hidden: boolean
}

function drawDimension(
  pen: CanvasRenderingContext2D,
  a: Spot,
  b: Spot,
  text: string,
  palette: Palette,
): void {
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  if (a.hidden || b.hidden || length < 2) return
  const ux = (b.x - a.x) / length
  const uy = (b.y - a.y) / length
  pen.strokeStyle = palette.accent
  pen.fillStyle = palette.accent
  pen.lineWidth = 1.25
  pen.beginPath()
  pen.moveTo(a.x, a.y)
  pen.lineTo(b.x, b.y)
  for (const end of [a, b]) {
    pen.moveTo(end.x - uy * 7, end.y + ux * 7)
    pen.lineTo(end.x + uy * 7, end.y - ux * 7)
  }
  pen.stroke()
  for (const [end, way] of [
    [a, 1],
    [b, -1],
  ] as const) {
    pen.beginPath()
    pen.moveTo(end.x, end.y)
    pen.lineTo(end.x + way * ux * 9 - uy * 3, end.y + way * uy * 9 + ux * 3)
    pen.lineTo(end.x + way * ux * 9 + uy * 3, end.y + way * uy * 9 - ux * 3)
    pen.fill()
  }
  pen.font = `${String(heavyPx)} ${String(textPx + 1)}px ${palette.font}`
  const width = pen.measureText(text).width + 14
  const x = (a.x + b.x) / 2
  const y = (a.y + b.y) / 2
  pen.fillStyle = palette.paper
  pen.beginPath()
  pen.roundRect(x - width / 2, y - 12, width, 24, 5)
  pen.fill()
  pen.fillStyle = palette.ink
  pen.textAlign = 'center'
  pen.textBaseline = 'middle'
  pen.fillText(text, x, y + 0.5)
}
