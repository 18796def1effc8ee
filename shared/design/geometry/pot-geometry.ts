import type { PartName } from '@shared/schema/check'

/*
 * The pot as plain arrays, ready to draw. Metres; z up from the base, +x towards the pot's front; a bearing runs
 * clockwise seen from above, so bearing 90° points along -y.
 */

export type Point = readonly [x: number, y: number, z: number]

/** What a surface should read as; the scene owns the colours. */
export type Look =
  | 'steel-galvanised'
  | 'steel-stainless'
  | 'steel-coated'
  | 'steel-black'
  | 'aluminium'
  | 'plastic'
  | 'wood'
  | 'lead'
  | 'concrete'
  | 'twine'
  | 'wire-galvanised'
  | 'wire-coated'
  | 'rope'
  | 'rope-sinking'
  | 'hose'
  | 'cord'
  | 'elastic'
  | 'bait'
  | 'tag'

/** A round bar, rope or hose along a centre line. */
export interface Tube {
  readonly part: PartName
  /** Index in the design's own list (frame member, entrance, gap), where the part is a list. */
  readonly index?: number
  readonly look: Look
  readonly radiusM: number
  /** xyz triples along the centre line. */
  readonly points: Float32Array
  /** The last point joins the first. */
  readonly closed: boolean
}

export type PanelName = 'wall' | 'front' | 'back' | 'left' | 'right' | 'top' | 'base' | 'funnel' | 'double'

/** Netting as straight bars of one thickness: six numbers a segment, x1 y1 z1 x2 y2 z2. */
export interface MeshLines {
  readonly part: PartName
  readonly index?: number
  readonly panel: PanelName
  readonly look: Look
  readonly diameterM: number
  readonly segments: Float32Array
  /** How many real meshes one drawn mesh stands for along each side; 1 when every bar is drawn. */
  readonly thinning: number
}

/** A body turned about an axis: the float, a lead ring, a jar. */
export interface Lathe {
  readonly part: PartName
  readonly index?: number
  readonly look: Look | 'float'
  /** Pairs of radius and distance along the axis, from one end to the other. */
  readonly profile: Float32Array
  readonly at: Point
  readonly axis: Point
  /** Colour names of the design, for the float. */
  readonly colours: readonly string[]
  readonly pattern: 'solid' | 'halves' | 'stripe'
}

/** A flat-sided block with its own axes: tag, bait, ballast bar. */
export interface Block {
  readonly part: PartName
  readonly index?: number
  readonly look: Look
  readonly centre: Point
  /** Full edge lengths along the block's own x, y, z. */
  readonly sizeM: Point
  /** Turn about the z axis [rad], anticlockwise seen from above. */
  readonly turnRad: number
}

/** A thin drawing line with arrow heads and a value, shown while `field` is being changed. */
export interface DimensionLine {
  /** Path in the design, as `body.heightMm` or `entrances.0.widthMm`. */
  readonly field: string
  readonly from: Point
  readonly to: Point
  readonly valueM: number
}

export interface PotGeometry {
  readonly tubes: readonly Tube[]
  readonly meshes: readonly MeshLines[]
  readonly lathes: readonly Lathe[]
  readonly blocks: readonly Block[]
  /** A point on each part that is present, for leader lines. */
  readonly anchors: Partial<Record<PartName, Point>>
  readonly dimensions: readonly DimensionLine[]
  /** Box round the pot itself, without rope and float. */
  readonly bounds: { readonly min: Point; readonly max: Point }
  /** Where the rope leaves the bridle, and where the float is drawn. */
  readonly haulPoint: Point
  /** Netting segments drawn for each part. */
  readonly lineCounts: Partial<Record<PartName, number>>
}

export interface GeometryOptions {
  /** 0 as built, 1 folded flat; ignored for a pot that does not fold. */
  readonly fold?: number
  /** Most netting segments drawn in all; finer netting is thinned to stay below it. */
  readonly maxSegments?: number
  /** Draw the rope's start and the float beside the pot; on unless false. */
  readonly withFloat?: boolean
}
