import type { PotDrawing } from '@shared/design/drawing/pot-views'

/* A workshop drawing on paper: millimetres of paper, right and down, at one of the scales that a rule has. */

const scales = [2, 2.5, 4, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50]

/** Room round a view for its sizes [mm of paper]. */
const margins = { left: 15, right: 13, above: 8, below: 10 }

const extent = ({ bounds }: PotDrawing) => ({
  widthM: bounds.max[0] - bounds.min[0],
  heightM: bounds.max[1] - bounds.min[1],
})

/**
 * The largest of the usual scales at which the views fit: the front beside the side, the plan below them beside the
 * schedule.
 *
 * @param sheetMm width and height on the paper for the views together
 * @returns the scale as 1 : n, the smallest one where none fits
 */
export function scaleFor(views: readonly PotDrawing[], sheetMm: { width: number; height: number }): number {
  const beside = views.filter(({ view }) => view !== 'above').map(extent)
  const plan = views.filter(({ view }) => view === 'above').map(extent)
  const wideM = beside.reduce((sum, one) => sum + one.widthM, 0)
  const highM = Math.max(...beside.map((one) => one.heightM)) + Math.max(...plan.map((one) => one.heightM))
  const roomWide = sheetMm.width - 2 * (margins.left + margins.right)
  const roomHigh = sheetMm.height - 2 * (margins.above + margins.below)
  const fits = (n: number) => (wideM * 1000) / n <= roomWide && (highM * 1000) / n <= roomHigh
  return scales.find(fits) ?? scales[scales.length - 1] ?? 50
}

/** From metres of the pot, up, to millimetres of paper, down. */
export function toPaper(drawing: PotDrawing, scale: number) {
  const perM = 1000 / scale
  const { min, max } = drawing.bounds
  return {
    perM,
    x: (m: number) => margins.left + (m - min[0]) * perM,
    y: (m: number) => margins.above + (max[1] - m) * perM,
    width: margins.left + margins.right + (max[0] - min[0]) * perM,
    height: margins.above + margins.below + (max[1] - min[1]) * perM,
  }
}
