import { demoCrews } from '@shared/contract/demo'
import { demo } from '@renderer/state/demo.svelte'
import { route } from '@renderer/state/route.svelte'
import { tour } from '@renderer/tour/tour.svelte'
import type { Command } from '@renderer/ui/commands.svelte'
import { firstSteps } from './first-steps.svelte'
import { startWords as w } from './words'

/** How to begin, to be found again by name. */
export const startCommands = (): Command[] => [
  {
    id: 'start:first-steps',
    label: w.command,
    group: w.group,
    run: () => {
      route.go('bench')
      firstSteps.ask()
    },
  },
  { id: 'start:tour', label: w.tour, group: w.group, run: () => tour.start() },
  ...demoCrews.map((crew) => ({
    id: `start:demo-${crew}`,
    label: w.showDemo(w.crews[crew]),
    group: w.group,
    available: () => demo.crew !== crew,
    run: () => void demo.show(crew),
  })),
  {
    id: 'start:remove-demo',
    label: w.removeDemo,
    group: w.group,
    available: () => demo.crew !== undefined,
    run: () => void demo.remove(),
  },
]
