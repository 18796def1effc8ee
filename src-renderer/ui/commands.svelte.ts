import { untrack } from 'svelte'

export interface Command {
  readonly id: string
  readonly label: string
  /** Heading it stands under, as the place it belongs to. */
  readonly group: string
  /** As `Ctrl+Z`; `Ctrl` also means the command key of a Mac. */
  readonly keys?: string
  readonly available?: () => boolean
  readonly run: () => void
}

/**
 * Everything that can be done by name or by key; the palette, the sheet of keys and the keyboard all read it. What lies
 * behind an open dialog cannot be reached by the pointer, and not by a key or the window's menu either.
 */
class Commands {
  list = $state.raw<readonly Command[]>([])

  /** Adds commands, and returns what takes them away again. */
  register(added: readonly Command[]): () => void {
    // Whoever registers from an effect must not run again because the list grew.
    this.list = [...untrack(() => this.list), ...added]
    return () => {
      this.list = untrack(() => this.list).filter((command) => !added.includes(command))
    }
  }

  /** Runs a command by its id, as the window's menu does. */
  run(id: string): void {
    if (isBehindDialog()) return
    const command = this.list.findLast((one) => one.id === id)
    if (command && (command.available?.() ?? true)) command.run()
  }

  /** Runs the command of a key press, if there is one; the newest of two with one key wins. */
  press(event: KeyboardEvent): boolean {
    if (isBehindDialog()) return false
    const pressed = keysOf(event)
    const found = this.list.findLast((command) => command.keys === pressed && (command.available?.() ?? true))
    if (!found || (isTyping(event.target) && !pressed.startsWith('Ctrl+'))) return false
    event.preventDefault()
    found.run()
    return true
  }
}

const isBehindDialog = () => document.querySelector('dialog:modal') !== null

function keysOf(event: KeyboardEvent): string {
  const key = event.key.length === 1 ? event.key.toUpperCase() : event.key
  const shift = event.shiftKey && /^[A-Z]$|^[A-Z][a-z0-9]/.test(key)
  return [event.ctrlKey || event.metaKey ? 'Ctrl' : '', event.altKey ? 'Alt' : '', shift ? 'Shift' : '', key]
    .filter(Boolean)
    .join('+')
}

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    target.matches('input:not([type=range], [type=checkbox]), textarea, select')
  )
}

export const commands = new Commands()
