import type { Water } from '@shared/schema/water'
import { conditionsAt } from '@shared/tides/conditions'
import type { Result } from '@shared/units/result'
import type { Predicted } from '@renderer/state/water-outlook'
import { reader } from '@renderer/ui/reader.svelte'
import { bottomWords, stripWords as w } from './words'

interface WaterFigure {
  readonly label: string
  readonly text: string
}

/**
 * What a saved water does on the days of the trip, for the strip.
 *
 * @param outlook its strongest current and heights; undefined while its stations are asked
 */
export function waterFigures(water: Water, outlook: Result<Predicted> | undefined): WaterFigure[] {
  const bottom = { label: w.bottom, text: water.bottom ? bottomWords[water.bottom] : w.notGiven }
  if (!outlook) return [{ label: w.strongest, text: w.askingStation }, bottom]
  if (!outlook.ok) return [{ label: w.strongest, text: outlook.error.message }, bottom]
  const conditions = conditionsAt(water, outlook.value)
  if ('missing' in conditions)
    return [
      { label: w.strongest, text: w.notGiven },
      { label: w.depth, text: reader.say(water.depthM, 'm') },
      bottom,
    ]
  const { surfaceCurrentMps, depthLowM, depthHighM } = conditions
  return [
    { label: w.strongest, text: reader.say(surfaceCurrentMps, 'm/s') },
    { label: w.depth, text: depthText(depthLowM, depthHighM) },
    bottom,
  ]
}

function depthText(lowM: number, highM: number): string {
  const high = reader.say(highM, 'm')
  if (lowM <= 0) return `${w.dries}, ${high}`
  const low = reader.digits(reader.shown(lowM, 'm'))
  return lowM === highM ? high : `${low}-${high}`
}
