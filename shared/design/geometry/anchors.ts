import type { PartName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { PotShape } from '../shape'
import { wallPoint } from './curves'
import type { Block, Lathe, MeshLines, Point, Tube } from './pot-geometry'

interface Drawn {
  readonly tubes: readonly Tube[]
  readonly meshes: readonly MeshLines[]
  readonly lathes: readonly Lathe[]
  readonly blocks: readonly Block[]
}

/**
 * A point on every part that is drawn, for leader lines: a body's middle, a bar's first point, or the wall at a
 * bearing that is usually free.
 */
export function anchorsOf(pot: Pot, shape: PotShape, drawn: Drawn): Partial<Record<PartName, Point>> {
  const anchors: Partial<Record<PartName, Point>> = {}
  for (const { part, centre } of drawn.blocks) anchors[part] ??= centre
  for (const { part, at } of drawn.lathes) anchors[part] ??= at
  for (const { part, points } of drawn.tubes) anchors[part] ??= middlePoint(points)
  const free = -Math.PI / 3
  anchors.body = wallPoint(shape, free, shape.heightM / 2)
  anchors.frame ??= wallPoint(shape, free, 0)
  if (pot.netting) anchors.netting = wallPoint(shape, free, shape.heightM * 0.6)
  if (pot.chafe && pot.chafe.kind !== 'none') anchors.chafe ??= wallPoint(shape, free, shape.heightM * 0.2)
  if (pot.release && pot.release.kind !== 'none') anchors.release ??= [0, 0, shape.heightM]
  if (pot.catchKg) anchors.catch = [0, 0, shape.heightM / 4]
  return anchors
}

function middlePoint(points: Float32Array): Point {
  const i = 3 * Math.floor(points.length / 6)
  return [points[i] ?? 0, points[i + 1] ?? 0, points[i + 2] ?? 0]
}
