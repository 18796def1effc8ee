import type { PartName } from '@shared/schema/check'
import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import { footLengthM, frameMembers } from './frame-members'
import { baitHolderRow, barMassPerM, cordMassPerM, ropeProperties, twineProperties } from './materials/lookup'
import { meshForm, nettingMassPerM2, nettingPanels, twineLengthPerM2 } from './netting-panels'
import { reachAt, shapeOf, type PotShape } from './shape'

/** One thing to buy or cut, with how much of it. */
export interface BillLine {
  readonly part: PartName
  /** What it is, for a person: "Base ring, galvanised steel 10 mm". */
  readonly what: string
  readonly quantity: number
  readonly unit: 'm' | 'm2' | 'piece' | 'kg'
  readonly massKg?: number
  /** Row of the materials by which a price is found. */
  readonly materialId: string
  readonly priceEach?: number
  readonly currency?: string
}

const roleWords = {
  'base-ring': 'Base ring',
  'middle-ring': 'Middle ring',
  'top-ring': 'Top ring',
  strut: 'Struts',
  'cross-bar': 'Cross-bars',
} as const

/** Length added to a cut for a lap, a knot or a splice [m]. Judgement. */
const tieAllowanceM = 0.3
// Judgement: wall, top and base are laced to the rings once round, at three times the length of the seam.
const lacingFactor = 3
const hooksPerDoor = 2

/**
 * What one pot is made of, with quantities: bar by member, netting and twine, wrap, cord, ties, hooks, rope and
 * float.
 *
 * Bar: piece length × count. Netting: hung area of the panels, stretched area = hung/(E₁ E₂); twine from two bars
 * a mesh. Wrap: rope laid turn on turn, π (d + t) for every t of bar. Lacing: three times the seams.
 *
 * @returns lines in the order of the design; masses [kg] where the tables know the material
 * @source the parts' own geometry; allowances are judgement
 */
export function billOfMaterials(pot: Pot, materials: Materials): BillLine[] {
  const shape = shapeOf(pot.body)
  const lines = [
    ...barLines(pot, materials, shape),
    ...ballastLines(pot),
    ...nettingLines(pot, materials, shape),
    ...wrapLines(pot, shape),
    ...fittings(pot, materials, shape),
    ...tackle(pot, materials),
  ]
  return lines.map((line) => priced(line, materials))
}

function barLines(pot: Pot, materials: Materials, shape: PotShape): BillLine[] {
  const lines = frameMembers(pot, shape).map((member): BillLine => {
    const quantity = member.pieceLengthM * member.count
    const diameterMm = Math.round(member.diameterM * 1e5) / 100
    const perM = barMassPerM(materials, member.material, diameterMm)
    return {
      part: member.role,
      what: `${roleWords[member.role]}, ${nameOf(materials, member.material)} ${diameterMm} mm`,
      quantity,
      unit: 'm',
      ...(perM === undefined ? {} : { massKg: perM * quantity }),
      materialId: member.material,
    }
  })
  const ring = frameMembers(pot, shape).find((member) => member.role === 'base-ring')
  if (ring && pot.body.feet > 0)
    lines.push({
      part: 'frame',
      what: `Feet, ${pot.body.feet} stubs of the base ring's bar`,
      quantity: pot.body.feet * footLengthM,
      unit: 'm',
      materialId: ring.material,
    })
  return lines
}

const ballastLines = (pot: Pot): BillLine[] =>
  (pot.ballast ?? []).map((piece) => ({
    part: 'ballast',
    what: `Ballast, ${piece.material}`,
    quantity: piece.massKg,
    unit: 'kg',
    massKg: piece.massKg,
    materialId: piece.material,
  }))

function nettingLines(pot: Pot, materials: Materials, shape: PotShape): BillLine[] {
  const netting = pot.netting
  if (!netting) return []
  const form = meshForm(netting)
  const panels = nettingPanels(pot, shape)
  const hung = panels.reduce((sum, panel) => sum + panel.areaM2, 0)
  const twine = twineProperties(materials, netting)
  const mass = twine && nettingMassPerM2(netting, twine.massKgPerM) * hung
  const weighed = mass === undefined ? {} : { massKg: mass }
  const sheet = form.square ? hung : hung / (form.e1 * form.e2)
  return [
    {
      part: 'netting',
      what: `Netting ${netting.material} ${netting.twineDiameterMm} mm, bar ${netting.barLengthMm} mm, ${form.square ? 'as laid' : 'stretched'}`,
      quantity: sheet,
      unit: 'm2',
      ...weighed,
      materialId: netting.material.toLowerCase(),
    },
    {
      part: 'netting',
      what: form.square ? 'Wire in that netting' : 'Twine in that netting, to make it by hand',
      quantity: twineLengthPerM2(form) * hung * (netting.knotted && !form.square ? 1.15 : 1),
      unit: 'm',
      materialId: netting.material.toLowerCase(),
    },
    {
      part: 'netting',
      what: 'Lacing twine',
      quantity: lacingFactor * seams(pot, shape),
      unit: 'm',
      materialId: netting.material.toLowerCase(),
    },
  ]
}

const seams = (pot: Pot, shape: PotShape) =>
  frameMembers(pot, shape)
    .filter((member) => member.role.endsWith('ring'))
    .reduce((sum, member) => sum + member.pieceLengthM * member.count, 0)

/** Wrap rope or hose over the bars that the design protects. */
function wrapLines(pot: Pot, shape: PotShape): BillLine[] {
  const kind = pot.chafe?.kind
  return frameMembers(pot, shape)
    .filter((member) => member.wrapM > 0)
    .map((member) => {
      const bar = member.pieceLengthM * member.count
      const hose = kind === 'hose'
      const inner = Math.round(member.diameterM * 1000)
      const thick = Math.round(member.wrapM * 1000)
      return {
        part: 'chafe',
        what: hose
          ? `Hose over the ${member.role}, ${inner} mm inside, ${thick} mm wall`
          : `Wrap of ${thick} mm rope on the ${member.role}`,
        quantity: hose ? bar : wrapLength(bar, member.diameterM, member.wrapM) + tieAllowanceM,
        unit: 'm',
        materialId: hose ? 'pvc' : 'pp',
      }
    })
}

/**
 * Length of rope wound turn on turn over a bar.
 *
 * l = L/t · √((π (d + t))² + t²)
 *
 * @param barM      length of bar covered L [m]
 * @param diameterM bar d [m]
 * @param ropeM     rope t [m], > 0
 * @returns length of rope [m]
 * @source length of a helix of pitch t on the diameter d + t
 */
export function wrapLength(barM: number, diameterM: number, ropeM: number): number {
  return (barM / ropeM) * Math.hypot(Math.PI * (diameterM + ropeM), ropeM)
}

function fittings(pot: Pot, materials: Materials, shape: PotShape): BillLine[] {
  const lines: BillLine[] = []
  const piece = (part: PartName, what: string, quantity: number, materialId: string) =>
    lines.push({ part, what, quantity, unit: 'piece', materialId })
  for (const [index, entrance] of (pot.entrances ?? []).entries())
    if (entrance.kind === 'one-way') piece('entrances', `One-way flap ${index + 1}`, 1, 'one-way-flap')
  for (const door of pot.doors ?? [])
    piece('doors', `Hooks and elastic for the ${door.where} door`, hooksPerDoor, 'door-hook')
  for (const gap of pot.escapeGaps ?? [])
    piece(
      'escape-gaps',
      gap.shape === 'circle'
        ? `Escape ring ${gap.diameterMm} mm`
        : `Escape gap ${gap.widthMm} × ${gap.heightMm} mm`,
      gap.count,
      'escape-gap',
    )
  const row = pot.bait && baitHolderRow(materials, pot.bait)
  if (row) piece('bait', row.name, 1, row.id)
  const release = pot.release
  if (release && release.kind !== 'none') {
    const quantity = (release.loops ?? 1) * tieAllowanceM
    const perM = cordMassPerM(materials, release)
    lines.push({
      part: 'release',
      what: `Release cord${release.material ? `, ${release.material}` : ''}${release.diameterMm ? ` ${release.diameterMm} mm` : ''}`,
      quantity,
      unit: 'm',
      ...(perM === undefined ? {} : { massKg: perM * quantity }),
      materialId: release.material ?? 'cord',
    })
  }
  if (pot.bridle)
    lines.push({
      part: 'bridle',
      what: `Bridle, ${pot.bridle.legs} ${pot.bridle.legs === 1 ? 'leg' : 'legs'}`,
      quantity: pot.bridle.legs * (0.5 * reachAt(shape, 0, shape.heightM) + tieAllowanceM),
      unit: 'm',
      materialId: (pot.rope?.material ?? 'PP').toLowerCase(),
    })
  return lines
}

function tackle(pot: Pot, materials: Materials): BillLine[] {
  const lines: BillLine[] = []
  if (pot.rope) {
    const rope = ropeProperties(materials, pot.rope)
    lines.push({
      part: 'rope',
      what: `Rope ${pot.rope.material} ${pot.rope.diameterMm} mm, ${pot.rope.construction}`,
      quantity: pot.rope.lengthM,
      unit: 'm',
      ...(rope ? { massKg: rope.massKgPerM * pot.rope.lengthM } : {}),
      materialId: pot.rope.material.toLowerCase(),
    })
    for (const weight of pot.rope.weights ?? [])
      lines.push({
        part: 'rope',
        what: `Line weight, ${weight.belowFloatM} m below the float`,
        quantity: weight.massKg,
        unit: 'kg',
        massKg: weight.massKg,
        materialId: 'lead',
      })
  }
  const float = pot.float
  if (float)
    lines.push({
      part: 'float',
      what:
        float.shape === 'sphere'
          ? `Ball float ${float.diameterMm} mm`
          : `${float.shape === 'bullet' ? 'Bullet' : 'Cylinder'} float ${float.diameterMm} × ${float.lengthMm} mm`,
      quantity: 1,
      unit: 'piece',
      massKg: float.massKg,
      materialId: float.shape,
    })
  return lines
}

const nameOf = (materials: Materials, id: string) =>
  materials.solids.find((solid) => solid.id === id)?.name.toLowerCase() ?? id

const priceUnit = { m: 'metre', m2: 'square-metre', piece: 'piece', kg: 'kilogram' } as const

function priced(line: BillLine, materials: Materials): BillLine {
  const price = materials.prices.find((p) => p.id === line.materialId && p.each === priceUnit[line.unit])
  return price ? { ...line, priceEach: price.amount, currency: price.currency } : line
}
