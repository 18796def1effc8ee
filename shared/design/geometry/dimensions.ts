import type { Pot } from '@shared/schema/pot'
import type { PotShape } from '../shape'
import { wallPointBeside } from './curves'
import type { Opening } from './openings'
import type { DimensionLine, Point } from './pot-geometry'
import { onCircle } from './turned-mesh'

const clear = 0.06

/** A line for every size of body, entrances and gaps that a person can drag. */
export function dimensionLines(
  pot: Pot,
  drawn: PotShape,
  press: number,
  openings: readonly Opening[],
): DimensionLine[] {
  return [...bodyLines(drawn), ...openings.flatMap((opening) => openingLines(pot, opening, drawn, press))]
}

const line = (field: string, from: Point, to: Point): DimensionLine => ({
  field,
  from,
  to,
  valueM: Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]),
})

function bodyLines(shape: PotShape): DimensionLine[] {
  const h = shape.heightM
  if (shape.kind === 'box') {
    const x = shape.lengthM / 2
    const y = shape.widthM / 2
    return [
      line('body.lengthMm', [-x, -y - clear, 0], [x, -y - clear, 0]),
      line('body.widthMm', [x + clear, -y, 0], [x + clear, y, 0]),
      line('body.heightMm', [x + clear, -y - clear, 0], [x + clear, -y - clear, h]),
    ]
  }
  const { baseRadiusM: base, topRadiusM: top } = shape
  const side = Math.max(base, top) + clear
  const lines = [
    line('body.baseDiameterMm', [0, -base, -clear / 2], [0, base, -clear / 2]),
    line('body.topDiameterMm', [0, -top, h + clear], [0, top, h + clear]),
  ]
  const [x, y] = onCircle(side, -Math.PI / 4, 0)
  lines.push(line('body.heightMm', [x, y, 0], [x, y, h]))
  return lines
}

function openingLines(pot: Pot, opening: Opening, shape: PotShape, press: number): DimensionLine[] {
  if (opening.face !== 'wall' || opening.part === 'doors') return []
  const z = opening.placeM * press
  const half = (opening.heightM * press) / 2
  const at = (across: number, level: number) =>
    wallPointBeside(shape, opening.angleRad, across * (opening.widthM / 2), level)
  const across = {
    from: at(-1, z + half + clear / 2),
    to: at(1, z + half + clear / 2),
    valueM: opening.widthM,
  }
  const up = { from: at(1.15, z - half), to: at(1.15, z + half), valueM: opening.heightM }
  const fromBase = {
    from: at(-1.15, 0),
    to: at(-1.15, z - half),
    valueM: opening.placeM - opening.heightM / 2,
  }
  if (opening.part === 'entrances') {
    const path = `entrances.${opening.index}`
    return [
      { field: `${path}.widthMm`, ...across },
      { field: `${path}.heightMm`, ...up },
      { field: `${path}.sillMm`, ...fromBase },
    ]
  }
  if (opening.part === 'release')
    return [
      { field: 'release.openingWidthMm', ...across },
      { field: 'release.openingHeightMm', ...up },
      { field: 'release.bottomEdgeMm', ...fromBase },
    ]
  const path = `escapeGaps.${opening.index}`
  const round = pot.escapeGaps?.[opening.index]?.shape === 'circle'
  return round
    ? [
        { field: `${path}.diameterMm`, ...across },
        { field: `${path}.bottomEdgeMm`, ...fromBase },
      ]
    : [
        { field: `${path}.widthMm`, ...across },
        { field: `${path}.heightMm`, ...up },
        { field: `${path}.bottomEdgeMm`, ...fromBase },
      ]
}
