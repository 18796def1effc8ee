import type { Bottom } from '@shared/schema/water'
import type { Theme } from './scene-model'

/* The colours of the view's own surroundings. What a part is made of has its colours in `materials.ts`. */

export interface Palette {
  readonly groundTop: string
  readonly groundBottom: string
  readonly ink: string
  readonly inkQuiet: string
  readonly paper: string
  readonly accent: string
  readonly fails: string
  readonly water: string
  readonly shadow: number
  /** Share by which the seabed is mixed towards the ground, so that it stays quiet. */
  readonly bedQuiet: number
}

export const palettes: Record<Theme, Palette> = {
  light: {
    groundTop: '#f1f4f6',
    groundBottom: '#cfd8df',
    ink: '#1b262d',
    inkQuiet: '#566570',
    paper: '#fbfcfd',
    accent: '#c2560c',
    fails: '#a8201a',
    water: '#5f97b3',
    shadow: 0.42,
    bedQuiet: 0.28,
  },
  dark: {
    groundTop: '#46535e',
    groundBottom: '#1f272e',
    ink: '#eef3f6',
    inkQuiet: '#b4c1cb',
    paper: '#1a2127',
    accent: '#ff9d52',
    fails: '#ff8f83',
    water: '#79b4d2',
    shadow: 0.6,
    bedQuiet: 0.42,
  },
}

export const bedColours: Record<Bottom, string> = {
  mud: '#6b6152',
  silt: '#857b69',
  'silty-sand': '#a89a7f',
  sand: '#c8b48c',
  'rippled-sand': '#c4b088',
  gravel: '#928e87',
  rock: '#757a7e',
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
