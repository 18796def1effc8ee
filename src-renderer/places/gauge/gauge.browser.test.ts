import { page } from 'vitest/browser'
import { beforeEach, expect, test } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { memoryBridge } from '@renderer/state/memory-bridge'
import { readPacks } from '@shared/rules/packs'
import { toBase } from '@shared/schema/rule-units'
import { packs } from '@renderer/state/packs.svelte'
import { drawnSize, shellKindOf, shellOfKind } from './drawing/shell-kind'
import Gauge from './Gauge.svelte'
import { gaugeView } from './gauge-view.svelte'
import { sayBag } from './sayings'
import CheckRuler from './print/CheckRuler.svelte'
import { trueSizeLayout } from './print/true-size'
import TrueSize from './print/TrueSize.svelte'

const shipped = [...readPacks().values()]

beforeEach(async () => {
  window.bridge = memoryBridge({
    packs: shipped.map((pack) => ({ region: pack.region, owner: 'built-in', pack: { ...pack } })),
  })
  await packs.load()
  gaugeView.follow('US-WA/US-WA:sp-dungeness-ps')
  gaugeView.forget()
})

test('every way of measuring that a pack asks for is drawn with the jaws in place', () => {
  const undrawn = shipped.flatMap((pack) =>
    pack.species
      .filter(({ measure, ...one }) => {
        const { method } = measure
        return method !== 'not-found' && !shellOfKind(shellKindOf({ ...one, measure })).contacts[method]
      })
      .map((one) => `${one.id} ${one.measure.method}`),
  )
  expect(undrawn).toEqual([])
})

test('a measurement is kept, returned, or to be taken again, and says so', async () => {
  await render(Gauge)
  await page.getByRole('radio', { name: 'Male', exact: true }).click()
  const field = page.getByRole('spinbutton', { name: 'Measured' })
  for (const [typed, word] of [
    ['170', 'Keep'],
    ['159', 'Measure again'],
    ['150', 'Return'],
  ] as const) {
    await field.fill(typed)
    await expect.element(page.getByText(word, { exact: true })).toBeVisible()
  }
  await page.getByRole('radio', { name: 'Female' }).click()
  await field.fill('170')
  await expect.element(page.getByText('Return', { exact: true })).toBeVisible()
})

/** Millimetres on paper: 96 px are an inch. */
const inMm = (px: number) => (px / 96) * 25.4
const PAPER_MM = 182

test.each([
  ['a width', 'oval', 'width-points-out', 158.75],
  ['a length', 'swimmer', 'length-notch-to-rear', 65],
  ['a length of a part of the animal', 'lobster', 'length-eye-to-rear', 87],
  ['one longer than the sheet is wide', 'rock-lobster', 'tail-length', 216],
] as const)(
  'the lines of %s stand exactly the limit apart, on the sheet, over the animal',
  async (_, kind, method, mm) => {
    const { container } = await render(TrueSize, { mm, kind, method, label: 'Between the lines' })
    const box = (part: string) => container.querySelector(part)?.getBoundingClientRect() ?? new DOMRect()
    const [sheet, lines, shell] = [box('svg'), box('.line'), box('.shell')]
    // Across the sheet, or down it where it is longer than the sheet is wide.
    const [span, drawn] = mm < PAPER_MM ? [lines.width, shell.width] : [lines.height, shell.height]
    expect(inMm(span)).toBeCloseTo(mm, 1)
    expect(inMm(drawn)).toBeGreaterThan(mm * 0.98)
    expect(inMm(sheet.width)).toBeLessThanOrEqual(PAPER_MM)
    expect(lines.left).toBeGreaterThanOrEqual(sheet.left - 1)
    expect(lines.bottom).toBeLessThanOrEqual(sheet.bottom + 1)
  },
)

test('no limit that ships is wider than the paper, and one that would be says so', async () => {
  for (const pack of shipped)
    for (const { sizes, measure, ...one } of pack.species) {
      const shell = shellOfKind(shellKindOf({ ...one, measure }))
      const drawn = drawnSize(shell, measure.method)
      for (const mm of sizes.flatMap(({ min, max, unit }) =>
        [min, max].flatMap((v) => (v ? toBase(v, unit) : [])),
      )) {
        const layout = trueSizeLayout(shell, shell.contacts[measure.method], drawn, mm)
        if (!layout) throw new Error(`${one.id}: ${mm} mm does not fit`)
        expect(layout.isUpright ? layout.alongMm : layout.spanMm).toBeLessThanOrEqual(PAPER_MM)
      }
    }
  await render(TrueSize, { mm: 400, kind: 'oval', method: 'width-widest', label: 'Between the lines' })
  await expect.element(page.getByText('longer than the sheet')).toBeVisible()
})

test('the ruler is 100 mm long', async () => {
  const { container } = await render(CheckRuler)
  const ticks = [...container.querySelectorAll('path')].map((path) => path.getBoundingClientRect().left)
  expect(inMm(Math.max(...ticks.slice(0, 101)) - Math.min(...ticks.slice(0, 101)))).toBeCloseTo(100, 1)
})

test('a limit by the container says how much that holds, and that a gallon may be one of two', () => {
  const first = (region: string, unit: string) => {
    const pack = shipped.find((one) => one.region === region)
    const bag = pack?.species.flatMap(({ bags }) => bags).find((one) => one.unit === unit)
    return pack && bag && sayBag(bag, pack)
  }
  expect(first('US-MD', 'bushel')).toContain('1 bushel (35.2 L) a person')
  expect(first('US-FL', 'gallon')).toContain(
    '10 gallons (44 L dry or 37.9 L liquid; which gallon is not said)',
  )
  expect(first('US-FL', 'gallon-claws')).toContain(
    '1 gallon of claws (4.4 L dry or 3.79 L liquid; which gallon is not said)',
  )
})
