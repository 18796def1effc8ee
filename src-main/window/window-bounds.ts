import * as v from 'valibot'

/** Where the window is on the desk, in pixels of the system's own scale. */
export interface Rectangle {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export const WindowBoundsSchema = v.strictObject({
  x: v.exactOptional(v.pipe(v.number(), v.integer())),
  y: v.exactOptional(v.pipe(v.number(), v.integer())),
  width: v.pipe(v.number(), v.integer(), v.minValue(200), v.maxValue(20_000)),
  height: v.pipe(v.number(), v.integer(), v.minValue(200), v.maxValue(20_000)),
  maximised: v.boolean(),
})

/** Without `x` and `y` the system places the window. */
export type WindowBounds = v.InferOutput<typeof WindowBoundsSchema>

export const firstBounds: WindowBounds = { width: 1440, height: 900, maximised: false }

// Enough of the title bar to take hold of the window with.
const graspPx = 120

/**
 * The bounds kept from last time, fitted to the screens there are now: no larger than the screen it is on, and
 * where a screen went away, back to a place the system chooses.
 */
export function fitToScreens(kept: WindowBounds, workAreas: readonly Rectangle[]): WindowBounds {
  const { x, y } = kept
  const on =
    x === undefined || y === undefined
      ? undefined
      : workAreas.find((area) => isGraspable({ ...kept, x, y }, area))
  const area = on ?? workAreas[0]
  if (!area) return kept
  const width = Math.min(kept.width, area.width)
  const height = Math.min(kept.height, area.height)
  if (!on || x === undefined || y === undefined) return { width, height, maximised: kept.maximised }
  return {
    x: Math.round(between(x, area.x - width + graspPx, area.x + area.width - graspPx)),
    y: Math.round(between(y, area.y, area.y + area.height - graspPx)),
    width,
    height,
    maximised: kept.maximised,
  }
}

function isGraspable(window: Rectangle, area: Rectangle): boolean {
  const across = Math.min(window.x + window.width, area.x + area.width) - Math.max(window.x, area.x)
  const above = window.y - area.y
  return across >= graspPx && above > -graspPx && above < area.height - graspPx
}

const between = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high)
