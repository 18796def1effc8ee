import type { Locator, Page } from 'playwright-core'

/** Presses what asks for a file, and chooses this one. */
export async function chooseFile(
  page: Page,
  button: Locator,
  file: { name: string; mimeType: string; buffer: Buffer },
): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), button.click()])
  await chooser.setFiles(file)
}

/** Drops a file on the page, wherever it is. */
export async function dropFile(page: Page, name: string, content: Buffer): Promise<void> {
  const dropped = await page.evaluateHandle(
    ([name, base64]) => {
      const carried = new DataTransfer()
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
      carried.items.add(new File([bytes], name))
      return carried
    },
    [name, content.toString('base64')] as const,
  )
  await page.locator('main').dispatchEvent('drop', { dataTransfer: dropped })
}

/** The smallest picture there is. */
export const onePixel = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
)
