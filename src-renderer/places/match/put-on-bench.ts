import { starterPots } from '@shared/design/starter-pots'
import type { Pot } from '@shared/schema/pot'
import { bench } from '@renderer/state/bench.svelte'
import { freshPot } from '@renderer/state/fresh-pot'
import { shelf } from '@renderer/state/shelf'
import { notices } from '@renderer/ui/notices.svelte'

/** Puts a design on the Bench; one that is not the reader's own yet goes on the shelf first, as a new one. */
export async function putOnBench(pot: Pot): Promise<boolean> {
  if (pot.id === bench.pot.id) return true
  await bench.autosave.flush()
  const own = shelf.find(pot.id)
  if (own && !starterPots.some(({ id }) => id === pot.id)) {
    await bench.open(own.document)
    return true
  }
  const answer = await shelf.save(freshPot(pot))
  if (answer.ok) await bench.open(answer.value.document)
  else notices.say(answer.error.message, { tone: 'fails' })
  return answer.ok
}
