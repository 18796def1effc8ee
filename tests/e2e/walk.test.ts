import { mkdir, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { editions, openApp } from './app'
import { Person } from './person'
import { walkSteps } from './walk-steps'

/*
 * A stranger's way from the first start to a build sheet on paper. `npm run tour` keeps a picture of each step for the
 * documents; otherwise the way is only walked.
 */

const pictures = fileURLToPath(new URL('../../assets/docs/tour', import.meta.url))
const keepsPictures = process.env['POTWRIGHT_TOUR'] === '1'

describe.each(editions)('$edition edition', ({ edition, missing }) => {
  test.skipIf(missing)(
    'a stranger prints a build sheet within two minutes',
    { timeout: 300_000 },
    async () => {
      const app = await openApp(edition)
      const { page } = app
      // The view of a busy machine without a graphics card takes its time before it lets a click through.
      page.setDefaultTimeout(90_000)
      const keep = keepsPictures && edition === 'browser'
      if (keep) await startOver()
      const person = new Person()
      for (const { name, act } of walkSteps) {
        await act(person, page)
        if (keep) await takePicture(page, name)
      }
      const printed = await app.printed(() => person.click(page.getByRole('button', { name: 'Save as PDF' })))
      expect(printed.subarray(0, 5).toString()).toBe('%PDF-')
      expect(person.took.seconds).toBeLessThan(120)
      expect(app.troubles).toEqual([])
      if (keep) await writeFile(join(pictures, 'README.md'), captions(person))
    },
  )
})

async function startOver() {
  await rm(pictures, { recursive: true, force: true })
  await mkdir(pictures, { recursive: true })
}

async function takePicture(page: Page, name: string) {
  // The view eases from one state to the next; nothing on the page says when it has come to rest.
  await page.waitForTimeout(4000)
  await page.screenshot({ path: join(pictures, `${name}.jpg`), type: 'jpeg', quality: 78 })
}

const captions = ({ took }: Person) =>
  `# A stranger's way: from the first start to a build sheet

${took.clicks} clicks. A person who reads what is on the way takes about ${Math.round(took.seconds)} seconds, reckoned by the
keystroke-level model. \`npm run tour\` walks it and takes these pictures anew.

${walkSteps.map(({ name, caption }, i) => `${i + 1}. ${caption}\n\n   ![${caption}](${name}.jpg)`).join('\n\n')}
`
