import type { SceneMode, ViewName } from './scene-model'

export const viewWords: Record<ViewName, string> = {
  'three-quarter': 'Corner',
  side: 'Side',
  top: 'Top',
  'up-current': 'Up-current',
  underside: 'Underside',
}

export const modeWords: Record<SceneMode, string> = {
  built: 'As built',
  findings: 'With findings',
  folded: 'Folded',
  haul: 'On the haul',
  drift: 'In the current',
  rig: 'With its rope',
  wear: 'By wear',
}

export const potViewWords = {
  views: 'Look from',
  shown: 'Shown',
  inWords: 'In words',
  save: 'Save picture',
  keys: 'Arrow keys turn it, plus and minus come nearer and go away, Home goes back.',
  noRig: 'Depth and current are needed to show the rope in the water.',
  legend: 'Life left',
  notLoaded: 'The picture could not be opened. Nothing was lost. Start Potwright again.',
} as const
