import type { Netting, Pot } from '@shared/schema/pot'
import { hasDoubleNetting } from './frame-members'
import { entranceShapes, funnelArea } from './entrance-shape'
import { baseArea, topArea, wallArea, wallCentreHeight, type PotShape } from './shape'
import { mm } from './si'

/** A panel of netting as sewn: its area, the height of its centre, and what it belongs to. */
export interface NettingPanel {
  readonly name: 'wall' | 'top' | 'base' | 'funnel' | 'double'
  readonly part: 'netting' | 'entrances' | 'chafe'
  /** Index of the entrance, for a funnel. */
  readonly index?: number
  readonly areaM2: number
  readonly centreHeightM: number
}

// Nets that are open above: the catch is held in by lifting.
const openAbove = new Set<Pot['gearKind']>(['dilly', 'hoop-net', 'drop-net', 'lift-net', 'ring-net'])

/** True where the top is closed with netting. */
export const hasTopNetting = (pot: Pot): boolean => !openAbove.has(pot.gearKind)

/** Share of the wall, from the base up, that a second layer of netting covers. Judgement. */
export const doubledShare = 0.5

/**
 * The panels of netting of a design: wall less its openings, top, base, one funnel an entrance, and the doubled
 * strip where netting is doubled against chafe.
 *
 * @returns panels with a positive area; empty without netting
 */
export function nettingPanels(pot: Pot, shape: PotShape): NettingPanel[] {
  if (!pot.netting) return []
  const entrances = entranceShapes(pot, shape)
  const opening = (onTop: boolean) =>
    entrances.filter((e) => e.onTop === onTop).reduce((sum, e) => sum + e.widthM * e.heightM, 0)
  const wall = Math.max(0, wallArea(shape) - opening(false))
  const panels: NettingPanel[] = [
    { name: 'wall', part: 'netting', areaM2: wall, centreHeightM: wallCentreHeight(shape) },
    { name: 'base', part: 'netting', areaM2: baseArea(shape), centreHeightM: 0 },
  ]
  if (hasTopNetting(pot)) {
    const areaM2 = Math.max(0, topArea(shape) - opening(true))
    panels.push({ name: 'top', part: 'netting', areaM2, centreHeightM: shape.heightM })
  }
  for (const entrance of entrances)
    panels.push({
      name: 'funnel',
      part: 'entrances',
      index: entrance.index,
      areaM2: funnelArea(entrance),
      centreHeightM: entrance.onTop
        ? shape.heightM - entrance.depthM / 2
        : entrance.sillM + entrance.heightM / 2,
    })
  if (hasDoubleNetting(pot))
    panels.push({
      name: 'double',
      part: 'chafe',
      areaM2: wall * doubledShare,
      centreHeightM: wallCentreHeight(shape) * doubledShare,
    })
  return panels.filter((panel) => panel.areaM2 > 0)
}

/** How the meshes hang, in metres: bar, twine, and the share of the stretched mesh across and down. */
export interface MeshForm {
  readonly square: boolean
  readonly barM: number
  readonly twineM: number
  /** Opening of one mesh across and down [m]. */
  readonly acrossM: number
  readonly downM: number
  readonly e1: number
  readonly e2: number
}

const squareRatio = Math.SQRT1_2

export const isWire = (netting: Pick<Netting, 'material'>): boolean => netting.material.startsWith('wire')

/**
 * Mesh opening as hung: across 2 a E₁, down 2 a E₂ with E₂ = √(1 - E₁²); wire netting a by a.
 *
 * @param netting its `hangingRatio` is E₁, 0.2-0.95, 0.7071 (square) when left out
 * @source hung area = stretched area × E₁ × E₂
 */
export function meshForm(netting: Netting): MeshForm {
  const barM = mm(netting.barLengthMm)
  const twineM = mm(netting.twineDiameterMm)
  if (isWire(netting))
    return { square: true, barM, twineM, acrossM: barM, downM: barM, e1: squareRatio, e2: squareRatio }
  const e1 = netting.hangingRatio ?? squareRatio
  const e2 = Math.sqrt(1 - e1 * e1)
  return { square: false, barM, twineM, acrossM: 2 * barM * e1, downM: 2 * barM * e2, e1, e2 }
}

// Knots add 10-20 % to the mass of netting, from memory of handbook practice; the middle is taken.
const knotMassFactor = 1.15

/**
 * Mass of netting per square metre as hung.
 *
 * Square or wire: 2 m/a; diamond: m/(a E₁ E₂); m mass of one metre of twine. Knots × 1.15.
 *
 * @param twineKgPerM mass of twine [kg/m], > 0
 * @returns mass [kg/m2]
 * @source two bars a mesh; knot share from handbook practice, 10-20 %
 */
export function nettingMassPerM2(netting: Netting, twineKgPerM: number): number {
  const form = meshForm(netting)
  const knots = netting.knotted && !form.square ? knotMassFactor : 1
  return knots * twineLengthPerM2(form) * twineKgPerM
}

/** Length of twine in a square metre of hung netting [m/m2], knots not counted. */
export function twineLengthPerM2(form: MeshForm): number {
  return form.square ? 2 / form.barM : 1 / (form.barM * form.e1 * form.e2)
}
