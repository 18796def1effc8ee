const DEPTH = 200
/** Changes of one thing closer together than this are one step back, as a drag of a slider. */
const JOIN_MS = 900

/** A line of states to go back and forth on. States are never changed in place. */
export class History<S> {
  #past = $state.raw<readonly S[]>([])
  #future = $state.raw<readonly S[]>([])
  current = $state.raw<S>() as S
  canUndo = $derived(this.#past.length > 0)
  canRedo = $derived(this.#future.length > 0)
  #lastKey = ''
  #lastAt = 0

  constructor(
    first: S,
    private readonly now: () => number = () => performance.now(),
  ) {
    this.current = first
  }

  /**
   * Takes a new state.
   *
   * @param key names what is being changed; quick changes with the same key are joined into one step
   */
  push(next: S, key: string): void {
    const at = this.now()
    if (key !== this.#lastKey || at - this.#lastAt > JOIN_MS)
      this.#past = [...this.#past.slice(-DEPTH + 1), this.current]
    this.#lastKey = key
    this.#lastAt = at
    this.#future = []
    this.current = next
  }

  undo(): void {
    const before = this.#past.at(-1)
    if (before === undefined) return
    this.#future = [this.current, ...this.#future]
    this.#past = this.#past.slice(0, -1)
    this.current = before
    this.#lastKey = ''
  }

  redo(): void {
    const [after, ...rest] = this.#future
    if (after === undefined) return
    this.#past = [...this.#past, this.current]
    this.#future = rest
    this.current = after
    this.#lastKey = ''
  }

  /** Starts again from a state, with nothing to go back to. */
  restart(first: S): void {
    this.#past = []
    this.#future = []
    this.#lastKey = ''
    this.current = first
  }
}
