import type { Point } from '@shared/design/geometry/pot-geometry'
import type { Check, PartName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { Bottom } from '@shared/schema/water'

/* What the view is given, and what it can be asked. The view reads a design; it never changes one. */

export type SceneMode = 'built' | 'folded' | 'findings' | 'wear' | 'haul' | 'drift' | 'rig'

export const viewNames = ['three-quarter', 'side', 'top', 'up-current', 'underside'] as const
export type ViewName = (typeof viewNames)[number]

export type Theme = 'light' | 'dark'

/** The rope's shape in the water, as the line solver gives it. */
export interface RigLine {
  /** Pairs of distance down-current [m] and height [m], from the float to the pot. */
  readonly shape: ArrayLike<number>
  readonly depthM: number
}

export interface SceneModel {
  readonly pot: Pot
  readonly mode: SceneMode
  readonly check?: Check | undefined
  readonly bottom?: Bottom | undefined
  /** Strongest surface current [m/s]; no arrows and no drift when left out or nought. */
  readonly currentMps?: number | undefined
  /** Where the current runs to, clockwise from the pot's front; it meets the front unless given. */
  readonly currentBearingDeg?: number | undefined
  /** Share of its life that each part has left, 0 to 1. */
  readonly wear?: Partial<Record<PartName, number>> | undefined
  readonly line?: RigLine | undefined
  /** From the pot's masses; the middle of the pot stands in for it. */
  readonly centreOfGravityM?: Point | undefined
  /** Carapace width of the crab that stands beside for scale; none when left out. */
  readonly crabWidthMm?: number | undefined
  /** The part whose controls are open. */
  readonly editing?: PartName | undefined
  /** Path of the size being dragged, as `body.heightMm`. */
  readonly dimension?: string | undefined
}

/** Writes a length for a person, in their units. */
type LengthText = (metres: number) => string
/** Writes a speed for a person, in their units. */
type SpeedText = (metresPerSecond: number) => string

export interface SceneOptions {
  readonly reducedMotion: boolean
  readonly theme: Theme
  readonly lengthText: LengthText
  readonly speedText: SpeedText
  readonly onPick?: (part: PartName | undefined) => void
  /** Says in plain words that the picture cannot be drawn, or that it can again. */
  readonly onError?: (message: string | undefined) => void
}

export interface PotScene {
  /** False when this machine cannot draw in three dimensions; everything else may still be called. */
  readonly works: boolean
  show(model: SceneModel): void
  view(name: ViewName): void
  highlight(part: PartName | undefined): void
  theme(theme: Theme): void
  /** The picture with its labels, `scale` times the size on screen. */
  toPng(scale?: number): Promise<Blob>
  /** What is held on the graphics card, for a test of steadiness. */
  memory(): { geometries: number; textures: number }
  /** Comes to rest and lets its pot go; the next is seen as if the view were new. */
  rest(): void
  dispose(): void
}
