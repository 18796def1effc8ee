/** Height of the capitals of the sheet's type as a share of its size, measured as the browser draws it. */
export function capitalShare(): number {
  const pen = document.createElement('canvas').getContext('2d')
  if (!pen) return 0.67
  pen.font = `600 1000px ${getComputedStyle(document.body).fontFamily}`
  return pen.measureText('H').actualBoundingBoxAscent / 1000
}

/** Room that a label's own margins take from the sheet [mm]. */
const labelMarginsMm = 12

/** Whether every line fits across the sheet when its capitals are so high. */
export function fitsAcross(lines: readonly string[], capitalsMm: number, sheetMm: number): boolean {
  return lines.every((line) => lineWidthMm(line.toUpperCase(), capitalsMm) <= sheetMm - labelMarginsMm)
}

/** How wide a line is when its capitals are so high [mm]. */
function lineWidthMm(text: string, capitalsMm: number): number {
  const pen = document.createElement('canvas').getContext('2d')
  if (!pen) return 0
  pen.font = `600 1000px ${getComputedStyle(document.body).fontFamily}`
  return ((pen.measureText(text).width / 1000) * capitalsMm) / capitalShare()
}
