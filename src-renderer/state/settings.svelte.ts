import { defaultSettings, type Settings } from '@shared/schema/settings'
import { notices } from '@renderer/ui/notices.svelte'
import { reader } from '@renderer/ui/reader.svelte'
import { unsaved } from './autosave.svelte'
import { bridge } from './bridge'

type Changeable = Omit<Settings, 'format' | 'version'>

/** This machine's own choices. A change shows at once and is written behind; a refused write says so. */
class SettingsState {
  current = $state.raw<Settings>(defaultSettings)
  theme = $derived(this.current.theme ?? 'system')

  async load(): Promise<void> {
    const answer = await bridge('settings:get', {})
    if (answer.ok) this.#take(answer.value)
    else notices.say(answer.error.message, { tone: 'fails' })
  }

  /** Whether it could be written. */
  async set(change: Changeable, clear: readonly (keyof Changeable)[] = []): Promise<boolean> {
    this.#take({ ...without(this.current, clear), ...change })
    const answer = await bridge('settings:set', { set: change, clear: [...clear] })
    if (!answer.ok) notices.say(answer.error.message, { tone: 'fails', topic: unsaved })
    return answer.ok
  }

  #take(next: Settings): void {
    this.current = next
    reader.units = next.units ?? 'metric'
  }
}

function without(settings: Settings, keys: readonly (keyof Changeable)[]): Settings {
  const kept = Object.entries(settings).filter(([key]) => !(keys as readonly string[]).includes(key))
  return Object.fromEntries(kept) as Settings
}

export const settings = new SettingsState()
