import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fitToScreens, firstBounds, type Rectangle } from './window-bounds'

const laptop: Rectangle = { x: 0, y: 25, width: 1280, height: 775 }
const beside: Rectangle = { x: 1280, y: 0, width: 1920, height: 1080 }
const kept = { x: 100, y: 100, width: 1000, height: 600, maximised: false }

describe('where the window opens', () => {
  test('where it was, if it fits', () => {
    expect(fitToScreens(kept, [laptop])).toEqual(kept)
    expect(fitToScreens({ ...kept, x: 1500 }, [laptop, beside])).toEqual({ ...kept, x: 1500 })
  })

  test('where the system puts it the first time, no larger than the screen', () => {
    expect(fitToScreens(firstBounds, [laptop])).toEqual({ width: 1280, height: 775, maximised: false })
  })

  test('where the system puts it when its screen went away', () => {
    expect(fitToScreens({ ...kept, x: 1500 }, [laptop])).toEqual({
      width: 1000,
      height: 600,
      maximised: false,
    })
  })

  test('as large as its screen at most, and still maximised', () => {
    const huge = { x: 1280, y: 0, width: 5000, height: 3000, maximised: true }
    expect(fitToScreens(huge, [laptop, beside])).toMatchObject({ width: 1920, height: 1080, maximised: true })
  })

  test('its title bar can always be taken hold of', () => {
    const whole = { min: -4000, max: 4000 }
    fc.assert(
      fc.property(
        fc.integer(whole),
        fc.integer(whole),
        fc.integer({ min: 200, max: 4000 }),
        (x, y, width) => {
          const fitted = fitToScreens({ x, y, width, height: 600, maximised: false }, [laptop, beside])
          if (fitted.x === undefined || fitted.y === undefined) return
          const { x: left, y: top, width: wide } = fitted
          const graspable = [laptop, beside].some(
            (area) =>
              Math.min(left + wide, area.x + area.width) - Math.max(left, area.x) >= 120 &&
              top >= area.y &&
              top < area.y + area.height,
          )
          expect(graspable).toBe(true)
        },
      ),
    )
  })

  test('without any screen it stays as kept', () => {
    expect(fitToScreens(kept, [])).toEqual(kept)
  })
})
