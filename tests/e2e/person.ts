import type { Locator } from 'playwright-core'

/*
 * How long a person takes over a task, by the keystroke-level model: Card, Moran & Newell, "The keystroke-level model
 * for user performance time with interactive systems", Commun. ACM 23(7), 1980, 396-410, table 1.
 */
const seconds = {
  /** A key, at 40 words a minute. */
  key: 0.28,
  /** Pointing at something and pressing the button. */
  point: 1.1 + 0.2,
  /** From the mouse to the keys, or back. */
  reach: 0.4,
  /** Making up one's mind. */
  think: 1.35,
}

/** Works the page as a person would, and adds up how long that takes. */
export class Person {
  #seconds = 0
  #clicks = 0

  get took(): { seconds: number; clicks: number } {
    return { seconds: this.#seconds, clicks: this.#clicks }
  }

  async click(target: Locator): Promise<void> {
    this.#point()
    await target.click()
  }

  /** Opens a list and picks from it. */
  async choose(list: Locator, label: string): Promise<void> {
    this.#point()
    this.#point()
    await list.selectOption({ label })
  }

  /** Goes to a field and writes over what stands there. */
  async write(field: Locator, text: string): Promise<void> {
    this.#point()
    this.#seconds += 2 * seconds.reach + (text.length + 1) * seconds.key
    await field.fill(text)
    await field.press('Tab')
  }

  /** Reads so many words; 230 a minute, the usual rate of silent reading (Brysbaert, J. Mem. Lang. 109, 2019: 238). */
  read(words: number): void {
    this.#seconds += (words * 60) / 230
  }

  #point(): void {
    this.#clicks += 1
    this.#seconds += seconds.think + seconds.point
  }
}
