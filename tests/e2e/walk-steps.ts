import type { Page } from 'playwright-core'
import type { Person } from './person'

/** One stop of a stranger's way from the first start to a sheet on paper. */
export interface WalkStep {
  /** Also the name of its picture. */
  readonly name: string
  readonly caption: string
  readonly act: (person: Person, page: Page) => Promise<void>
}

const verdict = (page: Page, name: string, state = '') =>
  page
    .getByRole('region', { name: 'Verdicts' })
    .getByRole('button', { name: new RegExp(`${name} ?${state}`) })

export const walkSteps: readonly WalkStep[] = [
  {
    name: '1-where-to-start',
    caption: 'The first start: begin from a shape, look at the demo, open a file, or be shown round.',
    act: async (person, page) => {
      await page.getByRole('heading', { name: 'Where to start' }).waitFor()
      person.read(60)
    },
  },
  {
    name: '2-start-from-a-shape',
    caption: 'Five common shapes. Every size can be changed afterwards.',
    act: async (person, page) => {
      await person.click(page.getByRole('button', { name: 'Start from a shape' }))
      await page.getByRole('dialog').getByRole('button', { name: 'Compact folding round' }).waitFor()
      person.read(20)
    },
  },
  {
    name: '3-on-the-bench',
    caption:
      'The pot on the Bench: its parts on the left, six verdicts on the right. What is missing is asked for.',
    act: async (person, page) => {
      await person.click(page.getByRole('dialog').getByRole('button', { name: 'Compact folding round' }))
      await page.getByRole('img', { name: /^Compact folding round/ }).waitFor()
      person.read(40)
    },
  },
  {
    name: '4-where-it-is-fished',
    caption:
      'Region, depth and current are given. The pot slides: the mark on the drawing shows which part is too light.',
    act: async (person, page) => {
      await person.choose(page.getByLabel('Region'), 'New South Wales')
      await person.write(page.getByLabel('Depth', { exact: true }), '6')
      await person.write(page.getByLabel('Current', { exact: true }), '0.6')
      await verdict(page, 'Holds bottom', 'Fails').waitFor()
    },
  },
  {
    name: '5-why-it-fails',
    caption:
      'A verdict opens to its findings: the value, the limit, what is to spare, and where the figure comes from.',
    act: async (person, page) => {
      await person.click(verdict(page, 'Holds bottom'))
      person.read(40)
    },
  },
  {
    name: '6-a-heavier-ring',
    caption:
      'A thicker bar in the base ring. The size is drawn on the pot while it changes, and the verdict turns.',
    act: async (person, page) => {
      await person.write(page.getByRole('region', { name: 'Base ring' }).getByRole('spinbutton'), '16')
      await verdict(page, 'Holds bottom', '(Holds|Close)').waitFor()
    },
  },
  {
    name: '7-on-the-haul',
    caption: 'As it hangs on the haul, by its bridle: no entrance looks down.',
    act: async (person, page) => {
      await person.choose(page.getByLabel('Shown', { exact: true }), 'On the haul')
      await page.getByRole('img', { name: /no entrance looks down/ }).waitFor()
    },
  },
  {
    name: '8-parts-and-cuts',
    caption: 'What to cut and what to buy.',
    act: async (person, page) => {
      await person.click(page.getByRole('tab', { name: 'Parts and cuts' }))
      person.read(20)
    },
  },
  {
    name: '9-build-sheet',
    caption:
      'The build sheet as it will lie on paper: three views to scale, bars to cut, netting panels, parts.',
    act: async (person, page) => {
      await person.click(page.getByRole('button', { name: 'Print', exact: true }))
      await person.click(page.getByRole('menuitem', { name: 'Build sheet' }))
      await page.getByRole('heading', { name: 'Drawing', exact: true }).waitFor()
    },
  },
]
