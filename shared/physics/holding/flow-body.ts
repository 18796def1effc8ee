import type { PartName } from '@shared/schema/check'

/** One piece of a pot that the current pushes on. */
export interface FlowBody {
  readonly part: PartName
  readonly kind: 'netting' | 'bar' | 'bluff'
  /** Outline area of netting; frontal area of a bar or a bluff body [m²]. */
  readonly areaM2: number
  /** Netting: solid share of its outline. */
  readonly solidity?: number
  /** Netting: angle between the current and the panel's normal [deg], 0 face-on, 90 along the panel. */
  readonly alphaDeg?: number
  /** Netting: which way a sloping panel's lift acts, 1 up, -1 down; left out means none. */
  readonly liftSign?: -1 | 1
  /** Netting: diameter of its twine or wire [m], for the Reynolds number. */
  readonly twineDiameterM?: number
  /** Netting: times by which growth on it multiplies its drag, 1 clean; left out means clean. */
  readonly growthDrag?: number
  /** How many panels of netting stand upstream of it. */
  readonly shadowed: number
  /** Bar or bluff body: its own drag coefficient; left out takes the coefficient of its kind and part. */
  readonly cd?: number
  /** Lift area, lift coefficient times area [m²], as of a closed top. */
  readonly liftAreaM2?: number
  /** Height of its middle and of its top above the bed [m]; it reaches as far below its middle as above. */
  readonly centreHeightM: number
  readonly topHeightM: number
  /** Solid volume, for the inertia force of waves [m³]. */
  readonly volumeM3: number
}

/** Drag and lift of one part. */
export interface PartDrag {
  readonly part: PartName
  readonly dragN: number
  readonly momentNm: number
  readonly liftN: number
}

/** Drag and lift of a whole pot standing on the bed. */
export interface PotDrag {
  readonly dragN: number
  /** Overturning moment of the drag about the bed [N·m]. */
  readonly momentNm: number
  readonly liftN: number
  readonly byPart: readonly PartDrag[]
}
