/** Below this nobody wonders whether anything is going on. */
const unseenMs = 500

/** The one long thing under way, and how far it is: told by who does it, or by the services as they go. */
class LongWork {
  /** What is being done; undefined where nothing is. */
  label = $state<string>()
  /** Whether it has taken long enough to be shown. */
  shown = $state(false)
  /** From 0 to 1, where that is known. */
  share = $state<number>()
  /** Photos done, and how many there are. */
  photos = $state.raw<{ done: number; of: number }>()

  async run<T>(label: string, work: (tell: (share: number) => void) => Promise<T>): Promise<T> {
    this.label = label
    const timer = setTimeout(() => (this.shown = true), unseenMs)
    try {
      return await work((share) => (this.share = share))
    } finally {
      clearTimeout(timer)
      this.shown = false
      this.label = this.share = this.photos = undefined
    }
  }

  heed(photos: { done: number; of: number }): void {
    if (this.label !== undefined) this.photos = photos
  }
}

export const longWork = new LongWork()
