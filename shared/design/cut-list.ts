import type { Pot } from '@shared/schema/pot'
import { frameMembers } from './frame-members'
import { entranceShapes } from './entrance-shape'
import { hasTopNetting, meshForm, type MeshForm } from './netting-panels'
import { shapeOf, slantLength, type BoxShape, type PotShape, type TurnedShape } from './shape'

/** A bar to cut: how many, how long, and the diameter it is bent to. */
export interface BarCut {
  readonly role: string
  readonly material: string
  readonly diameterM: number
  readonly count: number
  readonly lengthM: number
  /** Inside diameter of a ring when bent round [m]. */
  readonly bentToM?: number
}

/** A panel of netting to cut, with its shape on the flat and its meshes. */
export interface PanelCut {
  readonly name: string
  readonly count: number
  readonly shape:
    | { readonly kind: 'strip'; readonly lengthM: number; readonly widthM: number }
    | { readonly kind: 'disc'; readonly diameterM: number }
    | {
        readonly kind: 'sector'
        readonly outerRadiusM: number
        readonly innerRadiusM: number
        readonly angleDeg: number
      }
    | { readonly kind: 'trapezium'; readonly longM: number; readonly shortM: number; readonly depthM: number }
  /** Whole meshes along and across, as counted on the sheet. */
  readonly meshesLong: number
  readonly meshesDeep: number
}

export interface CutList {
  readonly bars: readonly BarCut[]
  readonly panels: readonly PanelCut[]
}

/**
 * Bars and panels to cut for one pot, panels as they lie when hung.
 *
 * Round wall: a strip, girth by slant. Cone: a sector, with the slant heights of the whole and of the cut-off cone
 * as radii and the angle 360° r/R. Dome: gores are left to the maker; a strip of its base girth is gathered at the
 * top. Box: one strip round the four sides. Meshes: length over 2 a E₁, depth over 2 a E₂.
 *
 * @returns whole pieces; netting panels only where the design has netting
 * @source development of a truncated cone
 */
export function cutList(pot: Pot): CutList {
  const shape = shapeOf(pot.body)
  const bars = frameMembers(pot, shape).map((member): BarCut => ({
    role: member.role,
    material: member.material,
    diameterM: member.diameterM,
    count: member.count,
    lengthM: member.pieceLengthM,
    ...(member.role.endsWith('ring') && shape.kind === 'turned'
      ? { bentToM: member.pieceLengthM / Math.PI - member.diameterM }
      : {}),
  }))
  return { bars, panels: pot.netting ? panelCuts(pot, shape, meshForm(pot.netting)) : [] }
}

function panelCuts(pot: Pot, shape: PotShape, form: MeshForm): PanelCut[] {
  const wall = shape.kind === 'box' ? boxWall(shape, form) : turnedWall(shape, form)
  const panels = [wall, level('base', shape, shape.kind === 'box' ? 0 : shape.baseRadiusM, form)]
  if (hasTopNetting(pot)) panels.push(level('top', shape, shape.kind === 'box' ? 0 : shape.topRadiusM, form))
  for (const entrance of entranceShapes(pot, shape))
    if (entrance.depthM > 0) {
      const longM = 2 * (entrance.widthM + entrance.heightM)
      const shortM = 2 * (entrance.eyeWidthM + entrance.eyeHeightM)
      panels.push({
        name: `funnel ${entrance.index + 1}`,
        count: 1,
        shape: { kind: 'trapezium', longM, shortM, depthM: entrance.depthM },
        ...counts(longM, entrance.depthM, form),
      })
    }
  return panels
}

const counts = (lengthM: number, depthM: number, form: MeshForm) => ({
  meshesLong: Math.max(1, Math.round(lengthM / form.acrossM)),
  meshesDeep: Math.max(1, Math.round(depthM / form.downM)),
})

function boxWall(shape: BoxShape, form: MeshForm): PanelCut {
  const lengthM = 2 * (shape.lengthM + shape.widthM)
  return {
    name: 'wall',
    count: 1,
    shape: { kind: 'strip', lengthM, widthM: shape.heightM },
    ...counts(lengthM, shape.heightM, form),
  }
}

function turnedWall(shape: TurnedShape, form: MeshForm): PanelCut {
  const slant = slantLength(shape)
  const wide = Math.max(shape.baseRadiusM, shape.topRadiusM)
  const narrow = Math.min(shape.baseRadiusM, shape.topRadiusM)
  const girth = 2 * Math.PI * wide
  const meshes = counts(girth, slant, form)
  // Within a tenth of a millimetre of round it is cut as a strip.
  if (shape.dome || wide - narrow < 1e-4)
    return { name: 'wall', count: 1, shape: { kind: 'strip', lengthM: girth, widthM: slant }, ...meshes }
  const outerRadiusM = (slant * wide) / (wide - narrow)
  return {
    name: 'wall',
    count: 1,
    shape: {
      kind: 'sector',
      outerRadiusM,
      innerRadiusM: outerRadiusM - slant,
      angleDeg: (360 * wide) / outerRadiusM,
    },
    ...meshes,
  }
}

function level(name: string, shape: PotShape, radiusM: number, form: MeshForm): PanelCut {
  if (shape.kind === 'box')
    return {
      name,
      count: 1,
      shape: { kind: 'strip', lengthM: shape.lengthM, widthM: shape.widthM },
      ...counts(shape.lengthM, shape.widthM, form),
    }
  return {
    name,
    count: 1,
    shape: { kind: 'disc', diameterM: 2 * radiusM },
    ...counts(2 * radiusM, 2 * radiusM, form),
  }
}
