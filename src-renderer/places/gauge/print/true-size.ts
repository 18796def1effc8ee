import type { Contact, Shell } from '../drawing/shells'

/** What fits between the margins of either paper, across and down [mm]. */
const ACROSS_MM = 182
const DOWN_MM = 220

export interface TrueSizeLayout {
  /** Room that the drawing takes between the lines' outer sides, and along the lines [mm]. */
  readonly spanMm: number
  readonly alongMm: number
  /** Room outside the first line [mm]. */
  readonly margin: number
  /** The lines lie across the sheet, one above the other, as they would not fit beside each other. */
  readonly isUpright: boolean
  /** Puts the shell so that the places measured lie on the two lines, at 0 and at the limit. */
  readonly transform: string
}

const ALONE_MM = 30
const FOOT_MM = 8

/**
 * Lays a shell over two lines that stand as far apart as a limit.
 *
 * A browser shrinks what is wider than its page, so nothing here ever is: what is left of the shell outside the paper
 * is cut off, never the lines.
 *
 * @param shell   the drawing
 * @param contact where it is measured; without it the lines stand alone
 * @param drawn   the measured distance in the drawing's own units
 * @param mm      the limit [mm]
 * @returns the layout, or undefined for a limit longer than the sheet
 */
export function trueSizeLayout(
  shell: Shell,
  contact: Contact | undefined,
  drawn: number | undefined,
  mm: number,
): TrueSizeLayout | undefined {
  const isUpright = mm + 2 > ACROSS_MM
  const [room, widest] = isUpright ? [DOWN_MM, ACROSS_MM] : [ACROSS_MM, DOWN_MM]
  if (mm + 2 > room) return undefined
  if (!contact || !drawn) return { spanMm: mm + 2, alongMm: ALONE_MM, margin: 1, isUpright, transform: '' }
  const scale = mm / drawn
  const isWidth = contact.axis === 'width'
  // The longer side of what reaches past the lines, alike on both sides.
  const past = isWidth
    ? (shell.halfWidth - contact.x) * scale
    : Math.max(contact.from - shell.top, shell.bottom - contact.to, 0) * scale
  const margin = Math.min(past + 2, (room - mm) / 2)
  const along = (isWidth ? shell.bottom - shell.top : 2 * shell.halfWidth) * scale + FOOT_MM
  const transform = isWidth
    ? `translate(${mm / 2} ${1 - shell.top * scale}) scale(${scale})`
    : `translate(${-contact.from * scale} ${shell.halfWidth * scale + 1}) scale(${scale}) rotate(-90) scale(-1 1)`
  return { spanMm: mm + 2 * margin, alongMm: Math.min(along, widest), margin, isUpright, transform }
}
