import { bench } from '@renderer/state/bench.svelte'
import { route } from '@renderer/state/route.svelte'
import { settings } from '@renderer/state/settings.svelte'
import { shelf } from '@renderer/state/shelf'
import type { Command } from '@renderer/ui/commands.svelte'
import { shellWords as w } from './words'

/** The designs that lay on the Bench last, the newest first, without the one that lies there now. */
export function recentCommands(): Command[] {
  return (settings.current.recentPots ?? []).flatMap((id) => {
    const pot = shelf.find(id)?.document
    if (!pot || pot.id === bench.pot.id) return []
    const open = () => {
      route.go('bench')
      void bench.open(pot)
    }
    return [{ id: `recent-${id}`, label: w.openDesign(pot.name), group: w.groups.recent, run: open }]
  })
}
