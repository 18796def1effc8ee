import { reweighed } from '@shared/design/reweighed'
import { criticalCurrents } from '@shared/physics/holding/critical-current'
import { standing, type Standing } from '@shared/physics/holding/standing-pot'
import type { Outlook } from '@shared/physics/coefficients'
import type { PartName } from '@shared/schema/check'
import type { Bottom } from '@shared/schema/water'
import type { CheckInput } from './check-input'
import { worstDepth } from './holds-bottom'
import { prepare, standingIn, type Prepared } from './prepared'

/** An arrow of the force diagram. x down-current from the pot's middle, z up from the bed. */
export interface ForceArrow {
  readonly name: 'drag' | 'rope' | 'weight' | 'lift' | 'grip' | 'ground'
  /** For a person: "Drag of the netting". */
  readonly label: string
  readonly part?: PartName
  readonly forceN: readonly [x: number, z: number]
  readonly sizeN: number
  /** Where it acts [m]. */
  readonly at: readonly [x: number, z: number]
}

/** Why a pot holds or not, in one current: forces, moments and the shape of the rope. */
export interface Explanation {
  readonly outlook: Outlook
  readonly currentMps: number
  readonly depthM: number
  readonly arrows: readonly ForceArrow[]
  /** Everything that pushes along the bed, and the most that the bottom can hold [N]. */
  readonly pushN: number
  readonly gripN: number
  readonly overturningNm: number
  readonly rightingNm: number
  readonly slideFactor: number
  readonly tipFactor: number
  /** Drag of each part, largest first, with its share of all that pushes. */
  readonly shares: readonly { readonly part: PartName; readonly dragN: number; readonly share: number }[]
  /** Rope from float to pot, x and z pairs [m]; undefined without a rope, or where it has no balance. */
  readonly rope:
    | {
        readonly shape: Float64Array
        readonly state: 'surface' | 'under'
        readonly tensionMaxN: number
        readonly verticalN: number
        readonly reserveN: number
        readonly dipM: number
        readonly offsetM: number
        readonly onBottomM: number
        readonly slackSurfaceM: number
      }
    | undefined
}

/** What to explain; what is left out is the strongest current, the worse stage of the tide, the middle outlook. */
export interface ExplainOptions {
  readonly outlook?: Outlook
  readonly currentMps?: number
  readonly depthM?: number
}

/**
 * Forces on the pot in one current, as numbers and arrows, with the side view of its rope.
 *
 * @param input   what `checkPot` takes
 * @param options outlook, current and depth to show
 * @returns undefined where the pot's weight, the current or the bottom is not known
 * @source the same models as the verdicts
 */
export function explain(input: CheckInput, options: ExplainOptions = {}): Explanation | undefined {
  const prepared = prepare(input)
  const water = knownWater(prepared)
  if (!water) return undefined
  const outlook = options.outlook ?? 'middle'
  const currentMps = options.currentMps ?? water.currentMps
  const depthM = options.depthM ?? water.depthM
  const solved = standing(standingIn(prepared, outlook, depthM, currentMps, water.bottom))
  return explanation(prepared, solved, { outlook, currentMps, depthM })
}

function knownWater(prepared: Prepared): { bottom: Bottom; depthM: number; currentMps: number } | undefined {
  const { conditions, mass } = prepared
  if (!conditions?.bottom || mass.missing.length > 0) return undefined
  const depthM = worstDepth(prepared, conditions, conditions.bottom)
  if (depthM === undefined) return undefined
  return { bottom: conditions.bottom, depthM, currentMps: conditions.surfaceCurrentMps }
}

function explanation(
  prepared: Prepared,
  solved: Standing,
  at: { outlook: Outlook; currentMps: number; depthM: number },
): Explanation {
  const { hold, drag, line } = solved
  const up = Math.max(0, hold.liftN) + Math.max(0, hold.ropeUpliftN)
  const pushN = drag.dragN + hold.ropeHorizontalN
  const shares = drag.byPart
    .map(({ part, dragN }) => ({ part, dragN, share: pushN > 0 ? dragN / pushN : 0 }))
    .sort((a, b) => b.dragN - a.dragN)
  return {
    ...at,
    arrows: arrowsOf(prepared, solved),
    pushN,
    gripN: Math.max(0, hold.friction * (hold.wetWeightN - up)),
    overturningNm: hold.dragMomentNm + up * hold.upliftArmM + hold.ropeHorizontalN * hold.bridleHeightM,
    rightingNm: hold.wetWeightN * hold.edgeArmM,
    slideFactor: solved.slideFactor,
    tipFactor: solved.tipFactor,
    shares,
    rope: line && line.state !== 'failed' ? line : undefined,
  }
}

const dragLabels: Partial<Record<PartName, string>> = {
  netting: 'Drag of the netting',
  entrances: 'Drag of the funnels',
  bait: 'Drag of the bait',
  catch: 'Drag of the catch',
  ballast: 'Drag of the ballast',
  chafe: 'Drag of the chafe gear',
  'base-ring': 'Drag of the base ring',
  'middle-ring': 'Drag of the middle ring',
  'top-ring': 'Drag of the top ring',
  strut: 'Drag of the struts',
  'cross-bar': 'Drag of the cross-bars',
}

function arrowsOf(prepared: Prepared, { hold, drag }: Standing): ForceArrow[] {
  const { mass, stance } = prepared
  const up = Math.max(0, hold.liftN) + Math.max(0, hold.ropeUpliftN)
  const ground = Math.max(0, hold.wetWeightN - up)
  const push = drag.dragN + hold.ropeHorizontalN
  const arrows: ForceArrow[] = drag.byPart
    .filter(({ dragN }) => dragN > 0)
    .map(({ part, dragN, momentNm }) => ({
      name: 'drag',
      label: dragLabels[part] ?? 'Drag of the frame',
      part,
      forceN: [dragN, 0],
      sizeN: dragN,
      at: [0, momentNm / dragN],
    }))
  const add = (
    name: ForceArrow['name'],
    label: string,
    forceN: ForceArrow['forceN'],
    at: ForceArrow['at'],
  ) => {
    const sizeN = Math.hypot(...forceN)
    if (sizeN > 0) arrows.push({ name, label, forceN, sizeN, at })
  }
  const middle: ForceArrow['at'] = [0, mass.centreOfGravity[2] + stance.baseHeightM]
  add('rope', 'Pull of the rope', [hold.ropeHorizontalN, hold.ropeUpliftN], [0, hold.bridleHeightM])
  add('weight', 'Weight in the water', [0, -hold.wetWeightN], middle)
  add('lift', 'Lift of the water', [0, Math.max(0, hold.liftN)], middle)
  add('ground', 'Push of the bottom', [0, ground], [0, 0])
  add('grip', 'Grip of the bottom', [-Math.min(push, hold.friction * ground), 0], [0, 0])
  return arrows
}

/** Low, middle and high value at one place of a curve. */
export interface BandPoint {
  readonly x: number
  readonly low: number
  readonly mid: number
  readonly high: number
}

const outlookKeys = { low: 'cautious', mid: 'middle', high: 'hopeful' } as const

function band(x: number, valueFor: (outlook: Outlook) => number): BandPoint {
  return {
    x,
    low: valueFor(outlookKeys.low),
    mid: valueFor(outlookKeys.mid),
    high: valueFor(outlookKeys.high),
  }
}

/**
 * Factor against moving (the lesser of sliding and tipping) over the current, with its band.
 *
 * @param steps points from still water to half again the strongest current
 * @returns x surface current [m/s]; empty where it cannot be told
 */
export function factorOverCurrent(input: CheckInput, steps = 24): BandPoint[] {
  const prepared = prepare(input)
  const water = knownWater(prepared)
  if (!water) return []
  const most = 1.5 * Math.max(water.currentMps, 0.4)
  return Array.from({ length: steps }, (_, i) => {
    const currentMps = (most * (i + 1)) / steps
    return band(currentMps, (outlook) => {
      const pot = standingIn(prepared, outlook, water.depthM, currentMps, water.bottom)
      const { slideFactor, tipFactor } = standing(pot, 'rough')
      return Math.min(slideFactor, tipFactor)
    })
  })
}

/**
 * Current at which the pot starts to move over mass added to its base ring, with its band. The ring is made of
 * thicker bar, and the thicker bar's drag is counted.
 *
 * @param barSizesMm bars to try [mm], as sold
 * @returns x mass of the base ring [kg], y surface current [m/s]; empty without a base ring or where it cannot be told
 */
export function currentOverRingMass(input: CheckInput, barSizesMm: readonly number[]): BandPoint[] {
  const index = (input.pot.frame ?? []).findIndex((member) => member.role === 'base-ring')
  if (index < 0) return []
  return barSizesMm.flatMap((barDiameterMm) => {
    const frame = (input.pot.frame ?? []).map((member, i) =>
      i === index ? { ...member, barDiameterMm } : member,
    )
    const pot = reweighed(input.pot, { ...input.pot, frame }, input.materials)
    const prepared = prepare({ ...input, pot })
    const water = knownWater(prepared)
    if (!water) return []
    const ring = prepared.mass.parts.find((part) => part.part === 'base-ring' && part.index === index)
    return [
      band(ring?.massKg ?? 0, (outlook) => {
        const pot = standingIn(prepared, outlook, water.depthM, water.currentMps, water.bottom)
        const { slide, tip } = criticalCurrents(pot)
        return Math.min(slide.currentMps, tip.currentMps)
      }),
    ]
  })
}
