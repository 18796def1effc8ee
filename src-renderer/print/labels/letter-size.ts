/** Height of the capitals of the sheet's type as a share of its size, measured as the browser draws it. */
export function capitalShare(): number {
  const pen = document.createElement('canvas').getContext('2d')
  if (!pen) return 0.67
  pen.font = `600 1000px ${getComputedStyle(document.body).fontFamily}`
  return pen.measureText('H').actualBoundingBoxAscent / 1000
}

/** How wide a line is when its capitals are so high [mm]. */
export function lineWidthMm(text: string, capitalsMm: number): number {
  const pen = document.createElement('canvas').getContext('2d')
  if (!pen) return 0
  pen.font = `600 1000px ${getComputedStyle(document.body).fontFamily}`
  return ((pen.measureText(text).width / 1000) * capitalsMm) / capitalShare()
}
