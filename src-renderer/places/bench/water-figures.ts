import type { Water } from '@shared/schema/water'
import { reader } from '@renderer/ui/reader.svelte'
import { bottomWords, stripWords as w } from './words'

/** What a saved water says of itself, for the strip. */
export function waterFigures(water: Water): { label: string; text: string }[] {
  return [
    { label: w.currentShort, text: currentText(water) },
    { label: w.depth, text: reader.say(water.depthM, 'm') },
    { label: w.bottom, text: water.bottom ? bottomWords[water.bottom] : w.notGiven },
    { label: w.tideRange, text: tideText(water) },
  ]
}

function currentText({ current }: Water): string {
  if (!current) return w.notGiven
  if (current.source === 'fixed') return reader.say(current.mps, 'm/s')
  if (current.source === 'rate') return `${reader.say(current.springMps, 'm/s')}, springs`
  return `station ${current.id.split('/')[1] ?? current.id}`
}

function tideText({ tide }: Water): string {
  if (!tide) return w.notGiven
  return tide.source === 'range'
    ? `${reader.say(tide.springM, 'm')}, springs`
    : `station ${tide.id.split('/')[1] ?? tide.id}`
}
