import type { SceneMode, ViewName } from '@renderer/scene/scene-model'

export const viewChoices: readonly { value: ViewName; label: string }[] = [
  { value: 'three-quarter', label: 'Corner' },
  { value: 'side', label: 'Side' },
  { value: 'top', label: 'Top' },
  { value: 'up-current', label: 'Up-current' },
  { value: 'underside', label: 'Underside' },
]

export const modeChoices: readonly { value: SceneMode; label: string }[] = [
  { value: 'built', label: 'As built' },
  { value: 'findings', label: 'With findings' },
  { value: 'folded', label: 'Folded' },
  { value: 'haul', label: 'On the haul' },
  { value: 'drift', label: 'In the current' },
  { value: 'rig', label: 'With its rope' },
]
