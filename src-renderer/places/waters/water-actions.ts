import type { Station } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'
import { bench } from '@renderer/state/bench.svelte'
import { bridge } from '@renderer/state/bridge'
import { bringIn } from '@renderer/state/bring-in'
import { askForFiles, offerFile } from '@renderer/state/file-exchange'
import { freshId } from '@renderer/state/fresh-pot'
import { waters } from '@renderer/state/shelf'
import { waterDesk } from '@renderer/state/water-desk.svelte'
import { notices } from '@renderer/ui/notices.svelte'
import { watersWords as w } from './words'

/** Keeps a new water and opens it. */
export async function keepWater(water: Omit<Water, 'format' | 'version' | 'id'>): Promise<boolean> {
  const answer = await waters.save({ ...water, format: 'potwright/water', version: 1, id: freshId() })
  if (!answer.ok) {
    notices.say(answer.error.message, { tone: 'fails' })
    return false
  }
  await waterDesk.choose(answer.value.document.id)
  return true
}

export async function copyWater(water: Water): Promise<void> {
  await keepWater({ ...water, name: w.copyOf(water.name).slice(0, 120) })
}

export async function exportWater(water: Water): Promise<void> {
  await waterDesk.autosave.flush()
  const answer = await waters.export(water.id)
  if (answer.ok) offerFile(answer.value.fileName, answer.value.text)
  else notices.say(answer.error.message, { tone: 'fails' })
}

export async function importWaters(): Promise<void> {
  await bringIn(await askForFiles('.json,application/json'))
}

/** Takes a water away, with a way back. */
export async function removeWater(water: Water): Promise<void> {
  await waterDesk.autosave.flush()
  const wasOnBench = bench.setup.chosen === water.id
  const answer = await waters.remove(water.id)
  if (!answer.ok) {
    notices.say(answer.error.message, { tone: 'fails' })
    return
  }
  if (wasOnBench) bench.chooseWater(undefined)
  notices.say(w.removed(water.name), {
    undo: () =>
      void waters.restore(water.id).then((restored) => {
        if (!restored.ok) notices.say(restored.error.message, { tone: 'fails' })
        else {
          if (wasOnBench) bench.chooseWater(water.id)
          void waterDesk.choose(water.id)
        }
      }),
  })
}

export function useOnBench(water: Water): void {
  bench.chooseWater(water.id)
  notices.say(w.onBench(water.name), { undo: () => bench.undo() })
}

/** The nearest station of the other kind, where it is near enough to stand for the place. */
export async function companionOf(
  station: Station,
): Promise<{ station: Station; distanceKm: number } | undefined> {
  const answer = await bridge('stations:near', {
    latitudeDeg: station.latitudeDeg,
    longitudeDeg: station.longitudeDeg,
    kind: station.kind === 'tide' ? 'current' : 'tide',
    limit: 1,
  })
  return answer.ok && answer.value.note === undefined ? answer.value.stations[0] : undefined
}
