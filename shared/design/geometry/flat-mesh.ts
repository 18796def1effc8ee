import type { MeshForm } from '../netting-panels'
import { insideHole, piecesOutside, type Hole } from './holes'
import type { Point } from './pot-geometry'
import { SegmentWriter } from './segment-writer'

/** A flat panel: a circle of one radius, or a rectangle by its half sizes, centred on the origin of (u, v). */
export type FlatOutline =
  | { readonly shape: 'circle'; readonly radius: number }
  | { readonly shape: 'rectangle'; readonly halfWidth: number; readonly halfHeight: number }

interface Flat {
  readonly outline: FlatOutline
  readonly holes: readonly Hole[]
  /** From the panel to the pot. */
  readonly at: (u: number, v: number) => Point
}

/**
 * Netting of a flat panel: every row of bars that runs straight is one segment, cut by the outline and the holes.
 *
 * Square mesh: rows along u and v, a apart. Diamond: rows along (E₁, ±E₂), 2 a E₁ E₂ apart.
 *
 * @param thinning draw one row of so many, ≥ 1
 * @returns segments, six numbers each
 */
export function flatMesh(flat: Flat, form: MeshForm, thinning: number): Float32Array {
  const writer = new SegmentWriter()
  for (const [du, dv] of directions(form)) strokes(flat, du, dv, rowSpacing(form) * thinning, writer)
  return writer.finish()
}

/** Rows drawn on a panel, before holes cut them: what the cap on segments is judged by. */
export function flatRowCount(outline: FlatOutline, form: MeshForm): number {
  return directions(form).reduce((sum, [du, dv]) => sum + (2 * reach(outline, -dv, du)) / rowSpacing(form), 0)
}

const directions = (form: MeshForm): readonly (readonly [number, number])[] =>
  form.square
    ? [
        [1, 0],
        [0, 1],
      ]
    : [
        [form.e1, form.e2],
        [form.e1, -form.e2],
      ]

const rowSpacing = (form: MeshForm) => (form.square ? form.barM : 2 * form.barM * form.e1 * form.e2)

/** Greatest distance of the outline from its centre along a direction. */
function reach(outline: FlatOutline, nu: number, nv: number): number {
  return outline.shape === 'circle'
    ? outline.radius
    : Math.abs(nu) * outline.halfWidth + Math.abs(nv) * outline.halfHeight
}

function strokes(flat: Flat, du: number, dv: number, spacing: number, writer: SegmentWriter): void {
  const nu = -dv
  const nv = du
  const far = reach(flat.outline, nu, nv)
  const long = reach(flat.outline, du, dv)
  const edge = asHole(flat.outline)
  const rows = Math.floor(far / spacing)
  for (let row = -rows; row <= rows; row++) {
    const offset = row * spacing
    const u0 = nu * offset - du * long
    const v0 = nv * offset - dv * long
    const u1 = nu * offset + du * long
    const v1 = nv * offset + dv * long
    const within = insideHole(edge, u0, v0, u1, v1)
    if (!within) continue
    const point = (t: number) => flat.at(u0 + (u1 - u0) * t, v0 + (v1 - v0) * t)
    const cut = piecesOutside(flat.holes, (hole) => insideHole(hole, u0, v0, u1, v1))
    for (const [from, to] of cut) {
      const a = Math.max(from, within[0])
      const b = Math.min(to, within[1])
      if (b > a) writer.add(point(a), point(b))
    }
  }
}

/** The outline itself, to keep what is inside. */
const asHole = (outline: FlatOutline): Hole =>
  outline.shape === 'circle'
    ? { shape: 'ellipse', u: 0, v: 0, halfWidth: outline.radius, halfHeight: outline.radius }
    : { shape: 'rectangle', u: 0, v: 0, halfWidth: outline.halfWidth, halfHeight: outline.halfHeight }
