import axe from 'axe-core'
import type { Page } from 'playwright-core'

/** What axe finds wrong on the page as it stands, a line a finding; an empty list is a clean page. */
export async function axeFindings(page: Page): Promise<string[]> {
  // Evaluated rather than loaded as a script: the page's own rules forbid scripts from elsewhere.
  await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const { axe: runner } = window as unknown as { axe: typeof axe }
    const { violations } = await runner.run(document)
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')}: ${failureSummary ?? ''}`),
    )
  })
}

/** The same page in both themes. */
export async function axeInBothThemes(page: Page): Promise<string[]> {
  const found: string[] = []
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    for (const finding of await axeFindings(page)) found.push(`${colorScheme}: ${finding}`)
  }
  return found
}
