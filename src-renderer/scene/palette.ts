import type { Bottom } from '@shared/schema/water'
import type { Theme } from './scene-model'

/* The colours of the view's own surroundings. What a part is made of has its colours in `materials.ts`. */

export interface Palette {
  readonly groundMiddle: string
  readonly groundEdge: string
  readonly ink: string
  readonly inkQuiet: string
  readonly paper: string
  readonly accent: string
  readonly fails: string
  readonly font: string
  readonly water: string
  readonly speck: string
  /** Of parts that nothing is said about, while others are marked. */
  readonly quiet: string
  readonly shadow: number
  /** Share by which the seabed is mixed towards the ground, so that it stays quiet. */
  readonly bedQuiet: number
}

/** What only the view needs, by theme. */
const own: Record<Theme, Pick<Palette, 'water' | 'speck' | 'quiet' | 'shadow' | 'bedQuiet'>> = {
  light: { water: '#3f7d9c', speck: '#6d97ad', quiet: '#98a4ac', shadow: 0.8, bedQuiet: 0 },
  dark: { water: '#79b4d2', speck: '#cfe6f2', quiet: '#5d6a74', shadow: 0.85, bedQuiet: 0.5 },
}

/** The interface's own colours as they stand on the page, so that view and page never disagree. */
export function readPalette(host: HTMLElement, theme: Theme): Palette {
  const style = getComputedStyle(host)
  const named = (property: string, otherwise: string) => style.getPropertyValue(property).trim() || otherwise
  return {
    groundMiddle: named('--studio-sky', 'lightgrey'),
    groundEdge: named('--studio-floor', 'darkgrey'),
    ink: named('--ink', 'black'),
    inkQuiet: named('--ink-soft', 'dimgrey'),
    paper: named('--surface-raised', 'white'),
    accent: named('--action', 'chocolate'),
    fails: named('--state-fails', 'darkred'),
    font: named('--font', 'sans-serif'),
    ...own[theme],
  }
}

export const bedColours: Record<Bottom, string> = {
  mud: '#8d8678',
  silt: '#a29b8c',
  'silty-sand': '#b8ad9b',
  sand: '#cabfa9',
  'rippled-sand': '#c6bba5',
  gravel: '#a9a6a0',
  rock: '#979da1',
}

/** Paint of floats and tags, by the design's colour names. */
export const paint: Readonly<Record<string, string>> = {
  white: '#f4f3ee',
  yellow: '#f2c61f',
  orange: '#ee7a1c',
  red: '#c4261d',
  pink: '#e89bb0',
  'hot-pink': '#e83f8c',
  green: '#2f8a4e',
  blue: '#2460a8',
  black: '#22262a',
  brown: '#6f4a30',
  grey: '#8e969c',
  purple: '#6d4293',
  'fluorescent-orange': '#ff6a13',
  'fluorescent-yellow': '#e4f222',
}

/** Life left, from worn out to new: differs in lightness as well as hue. */
export const wearScale = [
  { upTo: 0.15, colour: '#8f1d18', label: 'Worn out' },
  { upTo: 0.4, colour: '#d4761f', label: 'Replace soon' },
  { upTo: 0.7, colour: '#d9c65a', label: 'Part worn' },
  { upTo: 1, colour: '#8cc3d6', label: 'Sound' },
] as const

export const wearUnknown = { colour: '#8b949b', label: 'Not known' } as const
