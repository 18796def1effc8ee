import { waterDesk } from '@renderer/state/water-desk.svelte'
import type { Command } from '@renderer/ui/commands.svelte'
import { watersWords as w } from './words'

/** What can be done while Waters is open. */
export function watersCommands(open: { make: () => void }): Command[] {
  const undoable = { group: w.group, available: () => waterDesk.canUndo, run: () => waterDesk.undo() }
  const redoable = { group: w.group, available: () => waterDesk.canRedo, run: () => waterDesk.redo() }
  return [
    { id: 'new-water', label: w.newWater, group: w.group, run: open.make },
    { id: 'undo', label: w.undo, keys: 'Ctrl+Z', ...undoable },
    { id: 'redo', label: w.redo, keys: 'Ctrl+Y', ...redoable },
    { id: 'redo-shift', label: w.redo, keys: 'Ctrl+Shift+Z', ...redoable },
  ]
}
