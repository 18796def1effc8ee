import { mkdtemp, readdir, rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium, type Browser, type Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openTestServices } from '@main/services/open-test-services'
import { chromiumOptions, serve } from '../../e2e/browser-edition'
import { densestPot, putOnBench, writeFleet } from './prepared-data'
import { roundOfPlaces } from './round-of-places'
import { changeOften, compiledCode, dragSlider, heldBy, median, orbit, scriptPerChange } from './page-timings'

/* What the built program costs in a browser. The view is drawn in software here, so frames say least. */

const out = fileURLToPath(new URL('../../../out', import.meta.url))
const dist = fileURLToPath(new URL('../../../dist', import.meta.url))
/** As much as somebody does in an hour. */
const rounds = 14
const rows: [what: string, measured: string, wanted: string][] = []
let browser: Browser
let folder: string

beforeAll(async () => {
  browser = await chromium.launch(chromiumOptions)
  folder = await mkdtemp(join(tmpdir(), 'potwright-measure-'))
})
afterAll(async () => {
  await browser.close()
  await rm(folder, { recursive: true, force: true })
  print()
})

test('a slider dragged', async () => {
  await onPage('empty', async (page) => {
    const slider = page.getByRole('region', { name: 'Base ring' }).getByRole('slider')
    const tab = (name: string) => page.getByRole('tab', { name, exact: true }).click()
    await dragSlider(slider, 20)
    add(
      'Slider: from frame to frame, median',
      ms(median(await dragSlider(slider, 40))),
      '16 ms with a graphics card',
    )
    add(
      '  processor time of the script a change, view and all',
      ms(await scriptPerChange(page, slider, 40)),
      'under 16 ms',
    )
    await tab('Parts and cuts')
    await dragSlider(slider, 20)
    add(
      '  of it the design, six verdicts and every text',
      ms(await scriptPerChange(page, slider, 100)),
      'under 8 ms',
    )
    await tab('Pot')
    const { mb: before } = await heldBy(page)
    await changeOften(slider, 500)
    const { mb: after } = await heldBy(page)
    add('Memory held by the page, before and after 500 changes', `${mb(before)}, ${mb(after)}`, 'no growth')
  })
})

test('an hour of use', async () => {
  await onPage('hour', async (page) => {
    await page.getByRole('button', { name: 'Puget Sound crew, feet and pounds' }).click()
    await page.getByText('This is the demo.').waitFor()
    let actions = 0
    let third = 0
    for (let round = 1; round <= rounds; round++) {
      actions += await roundOfPlaces(page)
      const { mb: held, nodes, listeners } = await heldBy(page)
      const what = `Round ${round} of the places, ${actions} actions: memory held, nodes of the page, listeners`
      add(what, `${mb(held)}, ${nodes}, ${listeners}`, '')
      // The first rounds fetch each place's code and draw its pictures once; from then on nothing should be left over.
      if (round === 3) third = held - (await compiledCode(page))
      if (round === rounds) {
        const growth = held - (await compiledCode(page)) - third
        add('  growth a round since the third, compiled code aside', mb(growth / (rounds - 3)), 'none')
      }
    }
    expect(actions).toBeGreaterThan(500)
  })
}, 1_200_000)

test('the densest mesh turned', async () => {
  const data = join(folder, 'densest')
  const services = await openTestServices(data)
  await putOnBench(services, densestPot())
  services.close()
  await onPage('densest', async (page) => {
    const frames = await orbit(page, page.getByRole('img', { name: /Densest mesh/ }), 30)
    add(
      'View: densest mesh turned, from frame to frame, median',
      ms(median(frames)),
      '16 ms with a graphics card',
    )
  })
})

test('a cold start with 500 pots and 100,000 events', async () => {
  const services = await openTestServices(join(folder, 'fleet'))
  await writeFleet(services, 500, 100_000)
  services.close()
  const before = performance.now()
  const empty = await browser.newPage()
  await empty.goto('about:blank')
  const emptyMs = performance.now() - before
  await empty.close()
  const start = performance.now()
  await onPage('fleet', async (page) => {
    add(
      'Start: program, page and Bench ready, 500 pots and 100,000 events',
      ms(performance.now() - start),
      '1500 ms',
    )
    add('  an empty page of this browser alone', ms(emptyMs), '')
    await page.locator('canvas').first().waitFor()
    add('  and the picture of the pot with it', ms(performance.now() - start), '')
    const opened = performance.now()
    await page
      .getByRole('link', { name: 'Locker' })
      .or(page.getByRole('button', { name: 'Locker' }))
      .click()
    await page.getByText('500', { exact: false }).first().waitFor()
    add('  then the Locker open', ms(performance.now() - opened), '')
  })
})

test('the size of what is built, and of the installers made from it', async () => {
  for (const part of ['main', 'preload', 'renderer']) {
    const bytes = await sizeOf(join(out, part))
    expect(bytes).toBeGreaterThan(0)
    add(`Size of ${part}`, mb(bytes / 2 ** 20), '')
  }
  const made = await readdir(dist).catch(() => [])
  const installers = made.filter((name) => /\.(AppImage|deb|exe|dmg|zip)$/.test(name))
  for (const name of installers) add(`Size of ${name}`, mb((await stat(join(dist, name))).size / 2 ** 20), '')
  if (installers.length === 0) add('Size of an installer', 'none made here', '')
})

/** Opens the program on a folder of its own and waits until the Bench can be worked with. */
async function onPage(name: string, measure: (page: Page) => Promise<void>): Promise<void> {
  const host = await serve({ home: join(folder, `${name}-home`), dataFolder: join(folder, name) })
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  try {
    await page.goto(host.entrance)
    await page.getByRole('region', { name: 'Verdicts' }).getByRole('button', { name: 'Stows' }).waitFor()
    await measure(page)
  } finally {
    await page.close()
    await host.end('SIGTERM')
  }
}

async function sizeOf(place: string): Promise<number> {
  const found = await readdir(place, { recursive: true, withFileTypes: true })
  const sizes = found
    .filter((entry) => entry.isFile())
    .map(async (entry) => (await stat(join(entry.parentPath, entry.name))).size)
  return (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0)
}

const ms = (value: number) => `${value < 100 ? value.toFixed(1) : String(Math.round(value))} ms`
const mb = (value: number) => `${value.toFixed(1)} MB`
const add = (what: string, measured: string, wanted: string) => rows.push([what, measured, wanted])

function print() {
  const width = Math.max(...rows.map(([what]) => what.length))
  const lines = rows.map(([what, measured, wanted]) =>
    `${what.padEnd(width)}  ${measured.padStart(20)}  ${wanted && `(wanted: ${wanted})`}`.trimEnd(),
  )
  process.stdout.write(
    `\nThe program in a browser, drawn in software (SwiftShader): a graphics card draws far faster.\n${lines.join('\n')}\n\n`,
  )
}
