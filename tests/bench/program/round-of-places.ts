import type { Page } from 'playwright-core'

/**
 * What somebody does in some minutes: through every place and its tabs, a few sizes changed and taken back, a sheet
 * looked at, a search, and back to the Bench.
 *
 * @returns how many actions that were
 */
export async function roundOfPlaces(page: Page): Promise<number> {
  let actions = 0
  const act = async (what: Promise<unknown>) => {
    await what
    actions += 1
  }
  const places = page.getByRole('navigation', { name: 'Places' }).getByRole('button')
  for (const place of await places.all()) {
    await act(place.click())
    const row = page.getByRole('main').getByRole('tablist').last()
    await row.waitFor({ timeout: 2000 }).catch(() => undefined) // some places have no tabs
    if ((await row.count()) > 0) for (const tab of await row.getByRole('tab').all()) await act(tab.click())
  }

  await act(places.first().click())
  await act(page.getByRole('tab', { name: 'Pot', exact: true }).click())
  await act(page.getByRole('tab', { name: /^Frame/ }).click())
  const ring = page.getByRole('region', { name: 'Base ring' }).getByRole('slider')
  for (const size of ['8', '14', '20', '12']) await act(ring.fill(size))
  for (let back = 0; back < 4; back++) await act(page.keyboard.press('Control+z'))
  for (const mode of ['Folded', 'On the haul', 'As built'])
    await act(page.getByLabel('Shown', { exact: true }).selectOption({ label: mode }))
  for (const view of ['Side', 'Top', 'Corner'])
    await act(page.getByRole('button', { name: view, exact: true }).click())
  for (const name of ['Holds bottom', 'Legal', 'Legal'])
    await act(page.getByRole('region', { name: 'Verdicts' }).getByRole('button', { name }).first().click())

  await act(page.getByRole('button', { name: 'Print', exact: true }).click())
  await act(page.getByRole('menuitem', { name: 'Build sheet' }).click())
  await act(page.getByRole('button', { name: 'Back' }).click())
  await act(page.keyboard.press('Control+k'))
  await act(page.keyboard.type('Go to Bench'))
  await act(page.keyboard.press('Enter'))
  return actions
}
