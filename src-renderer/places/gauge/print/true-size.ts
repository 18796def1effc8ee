import type { Contact, Shell } from '../drawing/shells'

/** What fits between the margins of either paper [mm]. */
const PAPER_MM = 182

export interface TrueSizeLayout {
  readonly widthMm: number
  readonly heightMm: number
  /** Room left of the first line [mm]. */
  readonly margin: number
  /** Puts the shell so that the places measured lie on the two lines, at x = 0 and x = limit. */
  readonly transform: string
}

const ALONE_MM = 30
const FOOT_MM = 8

/**
 * Lays a shell over two lines that stand as far apart as a limit, the measured way always across.
 *
 * A length is turned to lie across the sheet; what is left of the shell outside the paper is cut off, never the lines.
 *
 * @param shell   the drawing
 * @param contact where it is measured; without it the lines stand alone
 * @param drawn   the measured distance in the drawing's own units
 * @param mm      the limit [mm]
 */
export function trueSizeLayout(
  shell: Shell,
  contact: Contact | undefined,
  drawn: number | undefined,
  mm: number,
): TrueSizeLayout {
  if (!contact || !drawn) return { widthMm: mm + 2, heightMm: ALONE_MM, margin: 1, transform: '' }
  const scale = mm / drawn
  const across = contact.axis === 'width'
  // The longer side of what reaches past the lines, alike on both sides.
  const past = across
    ? (shell.halfWidth - contact.x) * scale
    : Math.max(contact.from - shell.top, shell.bottom - contact.to, 0) * scale
  const margin = Math.min(past + 2, Math.max(1, (PAPER_MM - mm) / 2))
  const heightMm = (across ? shell.bottom - shell.top : 2 * shell.halfWidth) * scale + FOOT_MM
  const transform = across
    ? `translate(${mm / 2} ${1 - shell.top * scale}) scale(${scale})`
    : `translate(${-contact.from * scale} ${shell.halfWidth * scale + 1}) scale(${scale}) rotate(-90) scale(-1 1)`
  return { widthMm: mm + 2 * margin, heightMm, margin, transform }
}
