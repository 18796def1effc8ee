import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { openApp } from './app'
import { axeFindings, axeInBothThemes } from './axe'
import { everyPlace } from './places'

/* Every place and every tab of it, filled by the demo: by axe, at twice the size, in forced colours, by keyboard. */

test('no place has anything that axe objects to, in either theme', { timeout: 240_000 }, async () => {
  const app = await openApp('browser')
  const { page } = app
  const found: string[] = []
  await everyPlace(page, async (where) => {
    for (const finding of await axeInBothThemes(page)) found.push(`${where}: ${finding}`)
  })
  expect(found).toEqual([])
  expect(app.troubles).toEqual([])
})

test('at 200 % everything can be reached and nothing scrolls sideways', { timeout: 240_000 }, async () => {
  const app = await openApp('browser')
  const { page } = app
  // A window of 1280 by 800 has this many of its pixels left at twice the size.
  await page.setViewportSize({ width: 640, height: 400 })
  const found: string[] = []
  await everyPlace(page, async (where) => {
    for (const finding of await outOfReach(page)) found.push(`${where}: ${finding}`)
  })
  expect(found).toEqual([])
})

test('in forced colours no place loses its words or its marks', { timeout: 240_000 }, async () => {
  const app = await openApp('browser')
  const { page } = app
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark', reducedMotion: 'reduce' })
  const found: string[] = []
  await everyPlace(page, async (where) => {
    for (const finding of await axeFindings(page)) found.push(`${where}: ${finding}`)
    for (const finding of await markless(page)) found.push(`${where}: ${finding}`)
  })
  expect(found).toEqual([])
})

test('Tab leads through the whole Bench and out again, and the focus is always seen', async () => {
  const app = await openApp('browser')
  const { page } = app
  await page.getByRole('button', { name: 'Skip this' }).click()
  await page.getByRole('heading', { name: 'Where to start' }).waitFor({ state: 'detached' })
  // A fresh page starts at its top; this one would go on from where the button was.
  await page.reload()
  await page.getByRole('img', { name: /^Standard round/ }).waitFor()
  await page.getByRole('button', { name: /Stows/ }).waitFor()
  const stops: { where: string; seen: boolean }[] = []
  for (let press = 0; press < 150; press++) {
    await page.keyboard.press('Tab')
    const stop = await page.evaluate(focusedStop)
    // Past the last stop the focus goes to the browser's own controls.
    if (stop === undefined) break
    stops.push(stop)
  }
  expect(stops.length).toBeLessThan(150)
  expect(stops.filter(({ seen }) => !seen).map(({ where }) => where)).toEqual([])
  const way = stops.map(({ where }) => where).join('\n')
  const passed = [
    'Go to the content',
    'Waters',
    'Find anything',
    'Region',
    'Shelf',
    'Frame',
    'Bar diameter',
    'Pot',
    'Standard round',
    'Corner',
    'Legal',
    'Stows',
  ]
  expect(passed.filter((name) => !way.includes(name))).toEqual([])
  expect(stops[0]?.where).toBe('Go to the content')
})

/** Controls that stick out of the window or are cut off where nothing scrolls; runs in the page. */
function outOfReach(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = []
    const { scrollWidth, clientWidth } = document.documentElement
    if (scrollWidth > clientWidth) found.push(`the page is ${scrollWidth - clientWidth} px too wide`)
    const nameOf = (one: Element) =>
      one.getAttribute('aria-label') ?? (one.textContent.trim() || one.id || one.tagName)
    for (const control of document.querySelectorAll(
      'button, input, select, textarea, a[href], [role="tab"]',
    )) {
      if (!control.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue
      const box = control.getBoundingClientRect()
      if (box.width < 2 || box.height < 2) continue
      let left = 0
      let right = innerWidth
      let scrolls = false
      for (let up = control.parentElement; up; up = up.parentElement) {
        const { overflowX } = getComputedStyle(up)
        if (overflowX === 'auto' || overflowX === 'scroll') scrolls ||= up.scrollWidth > up.clientWidth
        if (overflowX === 'visible' || scrolls) continue
        const edge = up.getBoundingClientRect()
        left = Math.max(left, edge.left)
        right = Math.min(right, edge.right)
      }
      if (!scrolls && (box.right > right + 1 || box.left < left - 1)) found.push(nameOf(control).slice(0, 60))
    }
    return found
  })
}

/** Marks of a state that are drawn in the colour of what lies under them. */
function markless(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const ground = (from: Element): string => {
      for (let up: Element | null = from; up; up = up.parentElement) {
        const { backgroundColor } = getComputedStyle(up)
        if (backgroundColor !== 'rgba(0, 0, 0, 0)') return backgroundColor
      }
      return 'rgb(0, 0, 0)'
    }
    return [...document.querySelectorAll('.state svg, button svg')].flatMap((mark) => {
      const under = ground(mark)
      const inks = [mark, ...mark.querySelectorAll('*')].flatMap((part) => {
        const { stroke, fill } = getComputedStyle(part)
        return [stroke, fill]
      })
      return inks.some((ink) => ink !== 'none' && ink !== under)
        ? []
        : [`a mark is drawn in the colour of its ground: ${mark.outerHTML.slice(0, 80)}`]
    })
  })
}

/** What has the focus, by its name, and whether that is seen; undefined where it left the page. Runs in the page. */
function focusedStop(): { where: string; seen: boolean } | undefined {
  const focused = document.activeElement
  if (!focused || focused === document.body) return undefined
  const label = focused.getAttribute('aria-label') ?? (focused as HTMLInputElement).labels?.[0]?.textContent
  // A field with its unit is ringed as one; the parts of a date are marked by the browser itself.
  const ringed = [focused, focused.parentElement, focused.parentElement?.parentElement]
  return {
    where: (label ?? focused.textContent).trim().slice(0, 60),
    seen:
      focused.matches('[type="date"]') ||
      ringed.some((one) => one && getComputedStyle(one).outlineStyle !== 'none'),
  }
}
