import { bench } from '@renderer/state/bench.svelte'
import { route } from '@renderer/state/route.svelte'
import { settings } from '@renderer/state/settings.svelte'
import { type Command } from '@renderer/ui/commands.svelte'
import { places } from './places'
import { placeWords, shellWords as w } from './words'

/** What can be done from anywhere, by name or by key. */
export function shellCommands(open: { find: () => void; keys: () => void }): Command[] {
  const onBench = () => route.place === 'bench'
  return [
    ...places.map(({ id }, index): Command => ({
      id: `go-${id}`,
      label: w.goTo(placeWords[id].name),
      group: w.groups.go,
      keys: `Alt+${index + 1}`,
      run: () => route.go(id),
    })),
    {
      id: 'undo',
      label: w.undo,
      group: w.groups.edit,
      keys: 'Ctrl+Z',
      available: () => onBench() && bench.history.canUndo,
      run: () => bench.undo(),
    },
    {
      id: 'redo',
      label: w.redo,
      group: w.groups.edit,
      keys: 'Ctrl+Y',
      available: () => onBench() && bench.history.canRedo,
      run: () => bench.redo(),
    },
    {
      id: 'redo-shift',
      label: w.redo,
      group: w.groups.edit,
      keys: 'Ctrl+Shift+Z',
      available: () => onBench() && bench.history.canRedo,
      run: () => bench.redo(),
    },
    { id: 'find', label: w.commands, group: w.groups.go, keys: 'Ctrl+K', run: open.find },
    { id: 'keys', label: w.keys, group: w.groups.go, keys: '?', run: open.keys },
    ...(['metric', 'imperial'] as const).map((units) => ({
      id: `units-${units}`,
      label: `${w.units}: ${w[units]}`,
      group: w.groups.look,
      run: () => void settings.set({ units }),
    })),
    ...(['system', 'light', 'dark'] as const).map((theme) => ({
      id: `theme-${theme}`,
      label: `${w.theme}: ${w[theme]}`,
      group: w.groups.look,
      run: () => void settings.set({ theme }),
    })),
  ]
}
