import type { PotState } from '@shared/journal/locker-state'
import type { Pot } from '@shared/schema/pot'
import { wearOfPot } from '@shared/season/locker-lives'
import { bench } from '@renderer/state/bench.svelte'
import { locker } from '@renderer/state/locker.svelte'
import { route } from '@renderer/state/route.svelte'
import { waters } from '@renderer/state/shelf'
import { worn } from '@renderer/state/worn.svelte'

/** Opens a pot's design on the Bench with what use has done to its rope and netting. */
export async function checkOnBench(pot: PotState, design: Pot | undefined): Promise<void> {
  if (!design) return
  const reports = locker.reportsByPot.get(pot.id) ?? []
  await bench.open(design)
  worn.current = {
    number: pot.number,
    design: design.id,
    ...wearOfPot(reports, pot, locker.nowMs, waters.find(pot.water)?.document.temperatureC),
  }
  route.go('bench')
}
