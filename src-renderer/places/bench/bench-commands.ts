import { starterPots } from '@shared/design/starter-pots'
import { benchSheets } from '@renderer/print/bench-sheets'
import { printWords, sheetNames } from '@renderer/print/words'
import { bench } from '@renderer/state/bench.svelte'
import { route } from '@renderer/state/route.svelte'
import type { Command } from '@renderer/ui/commands.svelte'
import { benchView } from './bench-view.svelte'
import { partIds } from './part-ids'
import { copyPot, exportPot, importPots, startFrom } from './shelf-actions'
import { partWords, shelfWords as w } from './words'

const group = w.group

/** What can be done on the Bench by name or by key. */
export function benchCommands(open: { shelf: () => void }): Command[] {
  return [
    { id: 'pot:new', label: w.title, group, keys: 'Ctrl+O', run: open.shelf },
    { id: 'pot:copy', label: w.copyThis, group, keys: 'Ctrl+D', run: () => void copyPot(bench.pot) },
    { id: 'pot:import', label: w.importFiles, group, run: () => void importPots() },
    { id: 'pot:export', label: w.exportOne, group, keys: 'Ctrl+E', run: () => void exportPot(bench.pot) },
    ...benchSheets.map((id) => ({
      id: `print-${id}`,
      label: `${printWords.menu}: ${sheetNames[id]}`,
      group,
      ...(id === 'build' ? { keys: 'Ctrl+P' } : {}),
      run: () => route.print(id, { pot: bench.pot.id }),
    })),
    ...starterPots.map((pot) => ({
      id: `start-${pot.id}`,
      label: `${w.start}: ${pot.name}`,
      group,
      run: () => void startFrom(pot),
    })),
    ...partIds.map((id) => ({
      id: `part-${id}`,
      label: w.openPart(partWords[id]),
      group,
      run: () => {
        benchView.openPart(id)
        benchView.partsDrawer = true
      },
    })),
  ]
}
