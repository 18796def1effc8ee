import type { WaterConstants } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'
import { ok, type Result } from '@shared/units/result'
import { SvelteMap } from 'svelte/reactivity'
import { bridge } from './bridge'

const nothingToAsk = ok<WaterConstants>({})

/** Constants of the stations that waters name, fetched once each and then at hand. */
class StationConstants {
  #known = new SvelteMap<string, Result<WaterConstants>>()
  #asked = new Set<string>()

  /** What a water's stations bring, or undefined while it is on its way; whoever reads it is told when it comes. */
  of(water: Water): Result<WaterConstants> | undefined {
    const ids = stationsOf(water)
    if (ids.tide === undefined && ids.current === undefined) return nothingToAsk
    const key = JSON.stringify([ids.tide, ids.current])
    if (!this.#asked.has(key)) {
      this.#asked.add(key)
      void bridge('stations:constants', ids).then((answer) => {
        this.#known.set(key, answer)
        // A host that did not answer may do so the next time; a station that is not there stays unknown.
        if (!answer.ok && answer.error.code === 'unavailable') this.#asked.delete(key)
      })
    }
    return this.#known.get(key)
  }
}

function stationsOf({ tide, current }: Water): { tide?: string; current?: string } {
  return {
    ...(tide?.source === 'station' && { tide: tide.id }),
    ...(current?.source === 'station' && { current: current.id }),
  }
}

export const stationConstants = new StationConstants()
