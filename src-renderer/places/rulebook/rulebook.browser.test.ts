import { page } from 'vitest/browser'
import { beforeEach, expect, test } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { memoryBridge } from '@renderer/state/memory-bridge'
import { packs } from '@renderer/state/packs.svelte'
import { readPacks } from '@shared/rules/packs'
import { bringInRules } from '@renderer/state/own-rules'
import { notices } from '@renderer/ui/notices.svelte'
import { crabName } from '@renderer/places/gauge/sayings'
import Rulebook from './Rulebook.svelte'
import { rulebookView } from './rulebook-view.svelte'

const shipped = [...readPacks().values()]
const washington = shipped.find((pack) => pack.region === 'US-WA')
const missing = { commonNames: [], scientificName: '' }
const saidOf = (rule: string) => packs.find('US-WA')?.rules.find((one) => one.id === rule)?.says

beforeEach(async () => {
  window.bridge = memoryBridge({
    packs: shipped.map((pack) => ({ region: pack.region, owner: 'built-in', pack: { ...pack } })),
  })
  notices.list = []
  await packs.load()
  rulebookView.open('US-WA', 'US-WA:cord-size')
})

test('a value of the reader’s stands in for the shipped one, is marked, and gives it back when it goes', async () => {
  const before = saidOf('US-WA:cord-size')
  await render(Rulebook)
  const entry = page.getByRole('article', { name: before ?? '' })
  await entry.getByRole('button', { name: 'I checked this' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('spinbutton').first().fill('3/16')
  await expect
    .element(dialog.getByLabelText('The rule in one sentence'))
    .toHaveValue(expect.stringContaining('3/16 in'))
  await dialog.getByLabelText('Note').fill('Asked at the counter.')
  await dialog.getByRole('button', { name: 'Use my rule' }).click()
  await expect.poll(() => saidOf('US-WA:cord-size')).toContain('3/16 in')
  const mine = page.getByRole('article', { name: saidOf('US-WA:cord-size') ?? '' })
  await expect.element(mine.getByText(/^Yours, /)).toBeVisible()
  await expect.element(mine.getByText('Note: Asked at the counter.')).toBeVisible()
  await mine.getByRole('button', { name: 'Take my rule away' }).click()
  await expect.poll(() => saidOf('US-WA:cord-size')).toBe(before)
  notices.list.at(-1)?.undo?.()
  await expect.poll(() => saidOf('US-WA:cord-size')).toContain('3/16 in')
})

test('what may be kept is changed in a form, stands in the Gauge’s words, and comes back', async () => {
  const sayOf = () => packs.find('US-WA')?.species.find((one) => one.slug === 'metacarcinus-magister')
  const before = sayOf()?.sizes
  await render(Rulebook)
  const entry = page.getByRole('listitem', { name: crabName(sayOf() ?? missing) })
  await entry.first().getByRole('button', { name: 'I checked this' }).click()
  const dialog = page.getByRole('dialog')
  const limit = dialog.getByRole('group', { name: 'Size limit 1' })
  await limit.getByLabelText('At least').fill('6 1/2')
  await dialog.getByRole('button', { name: 'Add a number' }).click()
  await dialog.getByRole('button', { name: 'Use my entry' }).click()
  await expect.element(dialog.getByRole('alert')).toHaveTextContent('A number is left out')
  expect(sayOf()?.sizes).toEqual(before)
  await dialog
    .getByRole('button', { name: /^Take number \d away$/ })
    .last()
    .click()
  await limit.getByRole('button', { name: 'Only at some dates' }).click()
  await limit.getByLabelText('From, day').fill('31')
  await limit.getByLabelText('From, month').selectOptions('February')
  await limit.getByLabelText('To, day').fill('30')
  await limit.getByLabelText('To, month').selectOptions('September')
  await dialog.getByRole('button', { name: 'Use my entry' }).click()
  await expect.element(dialog.getByRole('alert')).toHaveTextContent('whole dates')
  await limit.getByLabelText('From, day').fill('1')
  await dialog.getByRole('button', { name: 'Use my entry' }).click()
  await expect
    .poll(() => sayOf()?.sizes[0])
    .toMatchObject({ min: 6.5, unit: 'in', seasons: [{ from: '02-01', to: '09-30' }] })
  await expect.element(entry.first().getByText(/^Yours, /)).toBeVisible()
  await entry.first().getByRole('button', { name: 'Take my entry away' }).click()
  await expect.poll(() => sayOf()?.sizes).toEqual(before)
  notices.list.at(-1)?.undo?.()
  await expect.poll(() => sayOf()?.sizes[0]?.min).toBe(6.5)
})

test('a species of the reader’s is added, and a season of theirs opens in the form as it was written', async () => {
  await render(Rulebook)
  await page.getByRole('button', { name: 'Add a species of your own' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('button', { name: 'Use my entry' }).click()
  await expect.element(dialog.getByRole('alert')).toHaveTextContent('Write what it is called.')
  await dialog.getByLabelText('What it is called').fill('Heron crab')
  await dialog.getByLabelText('Females').selectOptions('Goes back')
  await dialog.getByRole('button', { name: 'Add a number' }).click()
  const number = dialog.getByRole('group', { name: 'Number 1', exact: true })
  await number.getByLabelText('At most').fill('12')
  await number.getByLabelText('Counted', { exact: true }).selectOptions('per boat')
  await number.getByLabelText('From so many people up').fill('3')
  await number.getByRole('checkbox', { name: 'Red rock crab' }).click()
  await dialog.getByRole('button', { name: 'Use my entry' }).click()
  await expect
    .poll(() => packs.find('US-WA')?.species.at(-1))
    .toMatchObject({
      id: 'US-WA:own-1',
      slug: 'heron-crab',
      keep: { female: 'no', male: 'not-found' },
      sizes: [],
      bags: [{ value: 12, scope: 'boat', fromPeople: 3, combinedWith: ['cancer-productus'] }],
    })
  const entry = page.getByRole('listitem', { name: 'Heron crab' })
  await expect
    .element(entry.getByText('12 crabs a boat a day, counted together with Red rock crab, from 3 people up.'))
    .toBeVisible()

  await page.getByRole('button', { name: 'Add a rule of your own' }).click()
  await dialog.getByLabelText('The rule in one sentence').fill('Closed over the new year.')
  await dialog.getByLabelText('How it is checked').selectOptions('A season, open or closed')
  await dialog.getByLabelText('From, day').fill('20')
  await dialog.getByLabelText('From, month').selectOptions('December')
  await dialog.getByLabelText('To, day').fill('5')
  await dialog.getByLabelText('To, month').selectOptions('January')
  await dialog.getByLabelText('In force from').fill('2026-13')
  await dialog.getByRole('button', { name: 'Use my rule' }).click()
  await expect.element(dialog.getByRole('alert')).toHaveTextContent('The dates in force do not fit')
  await dialog.getByLabelText('In force from').fill('2026')
  await dialog.getByRole('button', { name: 'Use my rule' }).click()
  const rule = () => packs.find('US-WA')?.rules.find(({ id }) => id === 'own-1')
  await expect
    .poll(rule)
    .toMatchObject({ from: '2026', check: { op: 'closed', seasons: [{ from: '12-20', to: '01-05' }] } })
  await page
    .getByRole('article', { name: 'Closed over the new year.' })
    .getByRole('button', { name: 'Change my rule' })
    .click()
  await expect.element(dialog.getByLabelText('From, day')).toHaveValue('20')
  await expect.element(dialog.getByLabelText('To, month')).toHaveDisplayValue('January')
})

test('a rule that is not filled in is not kept and says what is missing', async () => {
  await render(Rulebook)
  await page.getByRole('button', { name: 'Add a rule of your own' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('button', { name: 'Use my rule' }).click()
  await expect.element(dialog.getByRole('alert')).toHaveTextContent('Write the rule in one sentence.')
  await dialog.getByLabelText('The rule in one sentence').fill('The rope is at least 8 mm thick.')
  await dialog.getByRole('button', { name: 'Use my rule' }).click()
  await expect.element(dialog.getByRole('alert')).toHaveTextContent('Something is left out.')
  await dialog.getByLabelText('Value').fill('8')
  await dialog.getByRole('button', { name: 'Use my rule' }).click()
  await expect.poll(() => saidOf('own-1')).toBe('The rope is at least 8 mm thick.')
})

test.each([
  [
    'an unknown operator',
    { check: { op: 'roughly', quantity: 'rope.diameter', value: 8, unit: 'mm' } },
    'rules.0.check',
  ],
  [
    'a unit that does not fit',
    { check: { op: 'min', quantity: 'rope.diameter', value: 8, unit: 'kg' } },
    'rules.0.check.unit',
  ],
  ['an impossible date', { check: { op: 'forbidden' }, from: '2026-02-30' }, 'rules.0.from'],
  ['an id used twice', { id: 'own-2', check: { op: 'forbidden' } }, 'rules.1.id'],
])('a file with %s is refused whole, with the path, and the rules in use stay', async (_, wrong, path) => {
  const rule = {
    id: 'own-1',
    subject: 'rope',
    says: 'The rope is thick.',
    standing: 'law',
    confidence: 'read',
    sources: [0],
    ...wrong,
  }
  const pack = {
    ...washington,
    over: 'built-in',
    own: true,
    zones: [],
    species: [],
    notFound: [],
    rules: [rule, { ...rule, id: 'own-2', check: { op: 'forbidden' } }],
  }
  expect(await bringInRules({ name: 'mine.json', text: JSON.stringify(pack) })).toBeUndefined()
  const said = notices.list.at(-1)?.text ?? ''
  expect(said).toContain('mine.json')
  expect(said).toContain(path)
  expect(packs.rules('US-WA')?.owner).toBe('built-in')
})

test('two regions stand side by side with what differs marked, and four are the most', async () => {
  rulebookView.setBeside(['US-WA', 'US-OR'])
  await render(Rulebook)
  const table = page.getByRole('table', { name: 'Rules side by side' })
  await expect.element(table.getByRole('columnheader', { name: 'Oregon' })).toBeVisible()
  const all = table.getByRole('row').elements().length
  await page.getByRole('switch', { name: 'Only what differs' }).click()
  await expect.poll(() => table.getByRole('row').elements().length).toBeLessThan(all)
  for (const row of table.getByRole('row').elements().slice(1)) expect(row.textContent).toContain('Differs')
  rulebookView.setBeside(['US-WA', 'US-OR', 'US-CA', 'US-WA', 'US-AK', 'US-MD'])
  expect(rulebookView.beside).toEqual(['US-WA', 'US-OR', 'US-CA', 'US-AK'])
  await expect.element(page.getByLabelText('Add a region')).not.toBeInTheDocument()
})

test('what is typed is found in every region and turns to the rule', async () => {
  rulebookView.open('US-WA')
  await render(Rulebook)
  await page.getByRole('searchbox').fill('untreated cotton')
  await page
    .getByRole('button', { name: /untreated cotton/ })
    .first()
    .click()
  await expect.element(page.getByRole('searchbox')).toHaveValue('')
  await expect.poll(() => document.activeElement?.tagName).toBe('ARTICLE')
})
