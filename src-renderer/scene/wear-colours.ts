import type { PartName } from '@shared/schema/check'
import { wearScale, wearUnknown } from './palette'

/** Colour of a share of life left; an unknown share has a colour of its own, never that of a sound part. */
export function wearColour(lifeLeft: number | undefined): string {
  if (lifeLeft === undefined || !Number.isFinite(lifeLeft)) return wearUnknown.colour
  return (wearScale.find(({ upTo }) => lifeLeft <= upTo) ?? wearScale[wearScale.length - 1] ?? wearUnknown)
    .colour
}

/** What the colours mean, worst first, with how many of the parts given stand at each. */
export function wearLegend(
  wear: Partial<Record<PartName, number>>,
): { colour: string; label: string; parts: number }[] {
  const lives = Object.values(wear)
  return [...wearScale, wearUnknown].map(({ colour, label }) => ({
    colour,
    label,
    parts: lives.filter((life) => wearColour(life) === colour).length,
  }))
}
