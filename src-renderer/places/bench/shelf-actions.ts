import type { Pot } from '@shared/schema/pot'
import { bench } from '@renderer/state/bench.svelte'
import { bringIn } from '@renderer/state/bring-in'
import { askForFiles, offerFile } from '@renderer/state/file-exchange'
import { freshPot } from '@renderer/state/fresh-pot'
import { shelf } from '@renderer/state/shelf'
import { notices } from '@renderer/ui/notices.svelte'
import { shelfWords as w } from './words'

/** Puts a new design on the shelf and on the bench. */
async function place(pot: Pot): Promise<void> {
  await bench.autosave.flush()
  const answer = await shelf.save(pot)
  if (answer.ok) await bench.open(answer.value.document)
  else notices.say(answer.error.message, { tone: 'fails' })
}

export const startFrom = (starter: Pot) => place(freshPot(starter))

export const copyPot = (pot: Pot) => place(freshPot(pot, w.copyOf(pot.name)))

export async function exportPot(pot: Pot): Promise<void> {
  await bench.autosave.flush()
  const answer = await shelf.export(pot.id)
  if (answer.ok) offerFile(answer.value.fileName, answer.value.text)
  else notices.say(answer.error.message, { tone: 'fails' })
}

export async function importPots(): Promise<void> {
  await bringIn(await askForFiles('.json,application/json'))
}

/** Takes a design off the shelf, with a way back. One that lies on the bench makes room for the next. */
export async function removePot(pot: Pot): Promise<void> {
  await bench.autosave.flush()
  const answer = await shelf.remove(pot.id)
  if (!answer.ok) {
    notices.say(answer.error.message, { tone: 'fails' })
    return
  }
  const onBench = bench.pot.id === pot.id
  if (onBench) await bench.makeRoom()
  notices.say(w.removed(pot.name), {
    undo: () =>
      void shelf.restore(pot.id).then((restored) => {
        if (!restored.ok) notices.say(restored.error.message, { tone: 'fails' })
        else if (onBench) void bench.open(restored.value.document)
      }),
  })
}
