import { page } from 'vitest/browser'
import { beforeEach, expect, test } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { memoryBridge } from '@renderer/state/memory-bridge'
import { readPacks } from '@shared/rules/packs'
import { packs } from '@renderer/state/packs.svelte'
import { shellKindOf, shellOfKind } from './drawing/shell-kind'
import Gauge from './Gauge.svelte'
import { gaugeView } from './gauge-view.svelte'
import CheckRuler from './print/CheckRuler.svelte'
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

test.each([
  ['a width', 'oval', 'width-points-out', 158.75],
  ['a length', 'swimmer', 'length-notch-to-rear', 65],
  ['a length of a part of the animal', 'lobster', 'length-eye-to-rear', 87],
  ['one longer than the sheet is wide', 'lobster', 'tail-length', 216],
] as const)(
  'the lines of %s stand exactly the limit apart, the animal between them',
  async (_, kind, method, mm) => {
    const { container } = await render(TrueSize, { mm, kind, method, label: 'Between the lines' })
    const lines = container.querySelector<SVGPathElement>('.line')?.getBoundingClientRect()
    expect(inMm(lines?.width ?? 0)).toBeCloseTo(mm, 1)
    const shell = container.querySelector<SVGGElement>('g')?.getBoundingClientRect()
    expect(inMm(shell?.width ?? 0)).toBeGreaterThan(mm * 0.98)
    expect((shell?.left ?? 0) - 1).toBeLessThan(lines?.left ?? 0)
  },
)

test('the ruler is 100 mm long', async () => {
  const { container } = await render(CheckRuler)
  const ticks = [...container.querySelectorAll('path')].map((path) => path.getBoundingClientRect().left)
  expect(inMm(Math.max(...ticks.slice(0, 101)) - Math.min(...ticks.slice(0, 101)))).toBeCloseTo(100, 1)
})
