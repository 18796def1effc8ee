import { packs } from '@renderer/state/packs.svelte'
import type { Command } from '@renderer/ui/commands.svelte'
import { importOwn } from './own/own-actions'
import { bookTabs, rulebookView } from './rulebook-view.svelte'
import { bookWords as w, ownWords } from './words'

/** What can be done in the Rulebook by name or by key. */
export function rulebookCommands(): Command[] {
  const { group } = w
  return [
    ...bookTabs.map((tab) => ({
      id: `book-${tab}`,
      label: w[tab],
      group,
      run: () => {
        rulebookView.tab = tab
        rulebookView.query = ''
      },
    })),
    {
      id: 'book:find',
      label: w.search,
      group,
      keys: 'Ctrl+F',
      run: () => document.querySelector<HTMLElement>('[role="search"] input')?.focus(),
    },
    { id: 'book:import', label: ownWords.import, group, run: () => void importOwn() },
    ...packs.list.map(({ region, name }) => ({
      id: `book-region-${region}`,
      label: `${ownWords.open}: ${name}`,
      group,
      run: () => rulebookView.open(region),
    })),
  ]
}
