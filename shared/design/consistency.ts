import { netBuoyancy } from '@shared/physics/float/float'
import { ropeWetWeight } from '@shared/physics/rope/weight'
import { gravity, seaWaterDensity } from '@shared/physics/constants'
import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import { formatQuantity } from '@shared/units/display'
import { plainLocale, type ReaderLocale } from '@shared/units/locale'
import { floatBodyOf } from './float-body-of'
import { ropeProperties } from './materials/lookup'
import { meshForm } from './netting-panels'
import { reachAt, shapeOf, type PotShape } from './shape'
import { angleOfBearing, mm } from './si'

/** Something in a design that cannot be so, or is hardly meant. The design is left as it is. */
export interface DesignIssue {
  /** Where, as `entrances.0.widthMm`. */
  readonly path: string
  /** One sentence for a person. */
  readonly message: string
  /** `impossible` cannot be built; `unlikely` can, but look again. */
  readonly kind: 'impossible' | 'unlikely'
}

/**
 * What in a design contradicts itself, each with its field. Sizes are compared as written; nothing is changed.
 *
 * @param materials for the rope's weight against the float's buoyancy
 * @param locale    of the sentences
 * @returns issues in the order of the design; empty when it is consistent
 */
export function consistency(
  pot: Pot,
  materials: Materials,
  locale: ReaderLocale = plainLocale,
): DesignIssue[] {
  const shape = shapeOf(pot.body)
  const say: Say = (value, unit) => formatQuantity(value, unit, locale)
  return [
    ...bodyIssues(pot),
    ...frameIssues(pot),
    ...nettingIssues(pot),
    ...openingIssues(pot, shape, say),
    ...doorIssues(pot),
    ...insideIssues(pot, say),
    ...tackleIssues(pot, materials, say),
  ]
}

/** A quantity as the reader reads it. */
type Say = (value: number, unit: 'mm' | 'm' | 'N') => string

const impossible = (path: string, message: string): DesignIssue => ({ path, message, kind: 'impossible' })
const unlikely = (path: string, message: string): DesignIssue => ({ path, message, kind: 'unlikely' })

function bodyIssues({ body }: Pot): DesignIssue[] {
  const issues: DesignIssue[] = []
  if (body.feet === 1 || body.feet === 2)
    issues.push(unlikely('body.feet', 'One or two feet do not stand. Use three or more, or none.'))
  if (body.shape === 'box') return issues
  if ((body.shape === 'cone' || body.shape === 'dome') && body.topDiameterMm >= body.baseDiameterMm)
    issues.push(
      unlikely('body.topDiameterMm', `A ${body.shape} narrows upwards, but its top is as wide as its base.`),
    )
  if (body.shape === 'round' && body.topDiameterMm < 0.5 * body.baseDiameterMm)
    issues.push(
      unlikely('body.topDiameterMm', 'The top is less than half as wide as the base. Is it a cone?'),
    )
  return issues
}

function frameIssues(pot: Pot): DesignIssue[] {
  const issues: DesignIssue[] = []
  for (const [i, member] of (pot.frame ?? []).entries())
    if (member.barDiameterMm > pot.body.heightMm / 2)
      issues.push(
        impossible(
          `frame.${i}.barDiameterMm`,
          `The ${member.role.replace('-', ' ')} is thicker than half the pot's height.`,
        ),
      )
  if (pot.frame && !pot.frame.some((member) => member.role === 'base-ring'))
    issues.push(unlikely('frame', 'There is no base ring. Its weight is what holds most pots.'))
  const height = pot.body.heightMm
  for (const [i, piece] of (pot.ballast ?? []).entries())
    if (piece.heightMm > height)
      issues.push(impossible(`ballast.${i}.heightMm`, 'The ballast is above the top of the pot.'))
    else if (piece.heightMm > height / 2)
      issues.push(unlikely(`ballast.${i}.heightMm`, 'Ballast in the upper half helps the pot to tip.'))
  return issues
}

function nettingIssues({ netting }: Pot): DesignIssue[] {
  if (!netting) return []
  const form = meshForm(netting)
  const issues: DesignIssue[] = []
  if (netting.twineDiameterMm >= netting.barLengthMm)
    issues.push(impossible('netting.twineDiameterMm', 'The twine is as thick as the mesh bar is long.'))
  else if (Math.min(form.acrossM, form.downM) < 2 * form.twineM)
    issues.push(unlikely('netting.hangingRatio', 'Hung like this the meshes close up.'))
  if (form.square && netting.hangingRatio !== undefined)
    issues.push(unlikely('netting.hangingRatio', 'Wire netting is not hung; the hanging ratio is not used.'))
  if (form.square && netting.knotted) issues.push(unlikely('netting.knotted', 'Wire netting has no knots.'))
  return issues
}

function openingIssues(pot: Pot, shape: PotShape, say: Say): DesignIssue[] {
  const issues: DesignIssue[] = []
  const height = pot.body.heightMm
  for (const [i, entrance] of (pot.entrances ?? []).entries()) {
    const path = `entrances.${i}`
    const room = mmOf(
      widthAvailable(shape, entrance.bearingDeg, mm(entrance.sillMm), entrance.onTop === true),
    )
    if (entrance.widthMm > room)
      issues.push(
        impossible(
          `${path}.widthMm`,
          `This entrance is ${say(entrance.widthMm, 'mm')} wide; the pot is ${say(room, 'mm')} there.`,
        ),
      )
    if (entrance.onTop === true) {
      if (entrance.heightMm > room)
        issues.push(
          impossible(
            `${path}.heightMm`,
            `This entrance is larger than the top, which is ${say(room, 'mm')}.`,
          ),
        )
      continue
    }
    if (entrance.sillMm >= height)
      issues.push(
        impossible(
          `${path}.sillMm`,
          `The sill is at ${say(entrance.sillMm, 'mm')}, above the wall of ${say(height, 'mm')}.`,
        ),
      )
    else if (entrance.sillMm + entrance.heightMm > height)
      issues.push(
        impossible(
          `${path}.heightMm`,
          `This entrance reaches ${say(entrance.sillMm + entrance.heightMm, 'mm')} up; the wall is ${say(height, 'mm')}.`,
        ),
      )
    if (entrance.depthMm !== undefined && entrance.depthMm > room)
      issues.push(impossible(`${path}.depthMm`, 'The funnel is deeper than the pot is wide.'))
  }
  for (const [i, gap] of (pot.escapeGaps ?? []).entries()) {
    if (gap.onTop === true) continue
    const path = `escapeGaps.${i}`
    const top = gap.bottomEdgeMm + (gap.shape === 'circle' ? gap.diameterMm : gap.heightMm)
    if (top > height)
      issues.push(
        impossible(
          `${path}.bottomEdgeMm`,
          `The escape gap reaches ${say(top, 'mm')} up; the wall is ${say(height, 'mm')}.`,
        ),
      )
    const width = gap.shape === 'circle' ? gap.diameterMm : gap.widthMm
    if (width * gap.count > mmOf(2 * Math.PI * reachAt(shape, 0, mm(gap.bottomEdgeMm))))
      issues.push(impossible(`${path}.count`, 'So many gaps do not fit round the wall.'))
  }
  const release = pot.release
  if (
    release?.openingHeightMm !== undefined &&
    (release.bottomEdgeMm ?? 0) + release.openingHeightMm > height
  )
    issues.push(
      impossible('release.openingHeightMm', 'The opening held by the cord is higher than the wall.'),
    )
  return issues
}

const mmOf = (metres: number) => metres * 1000

/** Width of the pot where an entrance sits: across the top, or across the wall it is in. */
function widthAvailable(shape: PotShape, bearingDeg: number, z: number, onTop: boolean): number {
  if (shape.kind === 'turned')
    return 2 * (onTop ? shape.topRadiusM : reachAt(shape, 0, Math.min(z, shape.heightM)))
  if (onTop) return Math.min(shape.lengthM, shape.widthM)
  const angle = angleOfBearing(bearingDeg)
  const atEnd = Math.abs(Math.cos(angle)) * shape.widthM >= Math.abs(Math.sin(angle)) * shape.lengthM
  return atEnd ? shape.widthM : shape.lengthM
}

function doorIssues(pot: Pot): DesignIssue[] {
  const doors = pot.doors
  if (!doors) return []
  const purposes = new Set(doors.map((door) => door.purpose))
  const both = purposes.has('bait-and-catch')
  const issues: DesignIssue[] = []
  if (!both && !purposes.has('catch')) issues.push(unlikely('doors', 'No door lets the catch out.'))
  if (!both && !purposes.has('bait') && pot.bait) issues.push(unlikely('doors', 'No door reaches the bait.'))
  if ((pot.release?.kind === 'cord-lid' || pot.release?.kind === 'cord-door') && doors.length === 0)
    issues.push(impossible('release.kind', 'The release cord holds a lid or a door, and there is none.'))
  return issues
}

function insideIssues(pot: Pot, say: Say): DesignIssue[] {
  if (pot.bait && pot.bait.heightMm > pot.body.heightMm)
    return [impossible('bait.heightMm', `The bait hangs at ${say(pot.bait.heightMm, 'mm')}, above the pot.`)]
  return []
}

function tackleIssues(pot: Pot, materials: Materials, say: Say): DesignIssue[] {
  const issues: DesignIssue[] = []
  for (const [i, weight] of (pot.rope?.weights ?? []).entries())
    if (pot.rope && weight.belowFloatM > pot.rope.lengthM)
      issues.push(
        impossible(
          `rope.weights.${i}.belowFloatM`,
          `This weight is ${say(weight.belowFloatM, 'm')} down a rope of ${say(pot.rope.lengthM, 'm')}.`,
        ),
      )
  if (pot.rope && !pot.bridle)
    issues.push(unlikely('bridle', 'The rope has nothing to be tied to: there is no bridle.'))
  if (!pot.float) return issues
  const buoyancy = netBuoyancy(floatBodyOf(pot.float), seaWaterDensity)
  if (buoyancy <= 0)
    issues.push(impossible('float.massKg', 'This float is too heavy for its size: it sinks by itself.'))
  else if (pot.rope) {
    const load = ropeLoad(pot, materials)
    if (load !== undefined && load > buoyancy)
      issues.push(
        impossible(
          'float.diameterMm',
          `The float carries ${say(buoyancy, 'N')}, but its rope weighs ${say(load, 'N')} in the water.`,
        ),
      )
  }
  return issues
}

function ropeLoad(pot: Pot, materials: Materials): number | undefined {
  const rope = pot.rope && ropeProperties(materials, pot.rope)
  if (!pot.rope || !rope) return undefined
  const weights = (pot.rope.weights ?? []).reduce((sum, weight) => sum + weight.massKg, 0)
  const lead = gravity * weights * (1 - seaWaterDensity / leadDensity)
  return lead + ropeWetWeight(rope.massKgPerM, rope.densityKgM3, seaWaterDensity, pot.rope.lengthM)
}

/** Line weights are lead [kg/m3]. */
const leadDensity = 11400
