import type { Pot } from '@shared/schema/pot'
import { frameMembers } from '../frame-members'
import { shapeOf, type PotShape } from '../shape'
import type { FlatPoint, ViewName } from './view-plane'

/** A size on the drawing: between two points of the pot, drawn on one side of it. */
export interface SizeLine {
  readonly from: FlatPoint
  readonly to: FlatPoint
  readonly valueM: number
  readonly side: 'below' | 'above' | 'left' | 'right'
  /** 0 next to the pot, 1 one step further out. */
  readonly row: number
  /** Across a round body, so that it is read as a diameter. */
  readonly round: boolean
}

/** The sizes a maker works to in one view: overall ones, and the heights of the rings between. */
export function viewDimensions(pot: Pot, view: ViewName): SizeLine[] {
  const shape = shapeOf(pot.body)
  if (view === 'above') return planSizes(shape)
  return view === 'side' ? [...widths(shape, 'side'), ...heights(pot, shape)] : widths(shape, 'front')
}

const size = (
  from: FlatPoint,
  to: FlatPoint,
  side: SizeLine['side'],
  more: { row?: number; round?: boolean } = {},
): SizeLine => ({
  from,
  to,
  valueM: Math.hypot(to[0] - from[0], to[1] - from[1]),
  side,
  row: more.row ?? 0,
  round: more.round ?? false,
})

function planSizes(shape: PotShape): SizeLine[] {
  if (shape.kind === 'turned') return []
  const x = shape.lengthM / 2
  const y = shape.widthM / 2
  return [size([-x, -y], [x, -y], 'below'), size([x, -y], [x, y], 'right')]
}

function widths(shape: PotShape, view: 'front' | 'side'): SizeLine[] {
  const h = shape.heightM
  if (shape.kind === 'box') {
    const half = (view === 'front' ? shape.widthM : shape.lengthM) / 2
    return [size([-half, 0], [half, 0], 'below')]
  }
  const { baseRadiusM: base, topRadiusM: top } = shape
  const lower = size([-base, 0], [base, 0], 'below', { round: true })
  return view === 'front' ? [lower, size([-top, h], [top, h], 'above', { round: true })] : [lower]
}

function heights(pot: Pot, shape: PotShape): SizeLine[] {
  const edge = shape.kind === 'box' ? shape.lengthM / 2 : Math.max(shape.baseRadiusM, shape.topRadiusM)
  const between = frameMembers(pot, shape)
    .filter((member) => member.role === 'middle-ring')
    .flatMap((member) => member.heightsM)
    .toSorted((a, b) => a - b)
  return [
    size([edge, 0], [edge, shape.heightM], 'right'),
    ...between.map((z, row) => size([-edge, 0], [-edge, z], 'left', { row })),
  ]
}
