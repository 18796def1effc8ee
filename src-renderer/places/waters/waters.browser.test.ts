import { figures } from '@renderer/state/figures.svelte'
import { starterPots } from '@shared/design/starter-pots'
import type { Water } from '@shared/schema/water'
import { userEvent } from 'vitest/browser'
import { expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { tidePicture } from '@renderer/state/tide-picture'
import { reader } from '@renderer/ui/reader.svelte'
import { MapView } from './stations/map-view.svelte'
import StationMap from './stations/StationMap.svelte'
import TidePictureChart from './tide/TidePicture.svelte'
import { tableDays } from './print/table-days'

const narrows: Water = {
  format: 'potwright/water',
  version: 1,
  id: 'narrows',
  name: 'Heron Narrows',
  depthM: 8,
  bottom: 'sand',
  latitudeDeg: 48.5,
  longitudeDeg: -122.7,
  timeZone: 'America/Los_Angeles',
  tide: { source: 'range', springM: 3, neapM: 1.5 },
  current: { source: 'rate', springMps: 0.9, neapMps: 0.5, floodDeg: 30 },
}
const [, pot] = starterPots

function pictureOf(water: Water, days = 2, day = '2026-12-05') {
  const picture = tidePicture({ water, constants: {}, day, days, pot, soakH: 6, tables: figures.tables })
  if (!picture.ok) throw new Error(picture.error.message)
  return picture.value
}

test('the picture is read by keyboard: height, depth, stream, and whether the pot does its work', async () => {
  reader.hours = 24
  const screen = await render(TidePictureChart, { picture: pictureOf(narrows), nowMs: 0 })
  const slider = screen.getByRole('slider', { name: /Heron Narrows/ })
  ;(slider.element() as unknown as SVGElement).focus()
  await userEvent.keyboard('{Home}')
  await expect
    .element(slider)
    .toHaveAttribute('aria-valuetext', expect.stringMatching(/^Sat 5 Dec 00:00, height/))
  reader.hours = 12
  await expect
    .element(slider)
    .toHaveAttribute('aria-valuetext', expect.stringMatching(/^Sat 5 Dec 12:00 AM, height/))
  const read = new Set<string>()
  for (let press = 0; press < 40; press++) {
    await userEvent.keyboard('{ArrowRight}')
    read.add(slider.element().getAttribute('aria-valuetext') ?? '')
  }
  expect(read.size).toBe(40)
  const all = [...read].join('\n')
  expect(all).toMatch(/flood/)
  expect(all).toMatch(/ebb/)
  expect(all).toMatch(/, holds/)
  expect(all).toMatch(/does not hold/)
})

test('without a bottom the lanes say that it cannot be told, and no window is shown', async () => {
  const { bottom, ...unknown } = narrows
  expect(bottom).toBe('sand')
  const screen = await render(TidePictureChart, { picture: pictureOf(unknown), nowMs: 0 })
  const lanes = [...screen.container.querySelectorAll('text')].map((text) => text.textContent)
  expect(lanes.filter((text) => text === 'cannot tell').length).toBeGreaterThanOrEqual(2)
  expect(lanes).not.toContain('Set')
})

test('days of a table are cut at local midnights, over a change of the clock too', () => {
  // Clocks go back on 1 November 2026: that day has 25 hours.
  const days = tableDays(pictureOf(narrows, 4, '2026-10-31'))
  expect(days.map(({ name }) => name)).toEqual(['Sat 31 Oct', 'Sun 1 Nov', 'Mon 2 Nov', 'Tue 3 Nov'])
  expect(days.map(({ fromMs, toMs }) => (toMs - fromMs) / 3_600_000)).toEqual([24, 25, 24, 24])
  const picture = pictureOf(narrows, 4, '2026-10-31')
  expect(days.flatMap(({ heights }) => heights)).toEqual(picture.prediction.heightEvents)
})

test('a day says when the pot works: all day in a creek with little run, and between two hours in the narrows', () => {
  reader.hours = 12
  const still = { ...narrows, current: { ...narrows.current, springMps: 0.1, neapMps: 0.05 } } as Water
  expect(tableDays(pictureOf(still)).map(({ works }) => works)).toEqual([['All day'], ['All day']])
  const running = tableDays(pictureOf(narrows)).flatMap(({ works }) => works)
  expect(running.length).toBeGreaterThan(2)
  for (const span of running) expect(span).toMatch(/^\d+:\d\d [AP]M-\d+:\d\d [AP]M$/)
})

test('zooming keeps the place under the pointer, and bounds follow the window', () => {
  const view = new MapView(-122, 48, 900)
  const before = view.under(100, 80)
  view.zoom(3, 100, 80)
  const after = view.under(100, 80)
  expect(after[0]).toBeCloseTo(before[0], 9)
  expect(after[1]).toBeCloseTo(before[1], 9)
  const { west, east, south, north } = view.bounds()
  expect(west).toBeLessThan(after[0])
  expect(east).toBeGreaterThan(after[0])
  expect(south).toBeLessThan(after[1])
  expect(north).toBeGreaterThan(after[1])
})

test('the map moves by keyboard and says where it came to rest', async () => {
  const view = new MapView(-122, 48, 900)
  const onlook = vi.fn()
  const screen = await render(StationMap, {
    view,
    stations: [],
    picked: undefined,
    position: undefined,
    onpick: vi.fn(),
    onspot: vi.fn(),
    onlook,
  })
  const { x, y, scale } = view
  ;(screen.getByRole('application').element() as HTMLElement).focus()
  await userEvent.keyboard('{ArrowRight}{ArrowUp}')
  expect(view.x).toBeGreaterThan(x)
  expect(view.y).toBeLessThan(y)
  await userEvent.keyboard('+')
  expect(view.scale).toBeGreaterThan(scale)
  await vi.waitFor(() => expect(onlook).toHaveBeenCalled())
})
