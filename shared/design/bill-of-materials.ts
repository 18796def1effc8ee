import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import { formatNominal } from '@shared/units/display'
import { plainLocale, type ReaderLocale } from '@shared/units/locale'
import { tieAllowanceM, type BillLine } from './bill-line'
import { fittings, tackle } from './bill-tackle'
import { footLengthM, frameMembers } from './frame-members'
import { barMassPerM, twineProperties } from './materials/lookup'
import { meshForm, nettingMassPerM2, nettingPanels, twineLengthPerM2 } from './netting-panels'
import { shapeOf, type PotShape } from './shape'

export type { BillLine }

const roleWords = {
  'base-ring': 'Base ring',
  'middle-ring': 'Middle ring',
  'top-ring': 'Top ring',
  strut: 'Struts',
  'cross-bar': 'Cross-bars',
} as const

// Judgement: wall, top and base are laced to the rings once round, at three times the length of the seam.
const lacingFactor = 3

/**
 * What one pot is made of, with quantities: bar by member, netting and twine, wrap, cord, ties, hooks, rope and
 * float.
 *
 * Bar: piece length × count. Netting: hung area of the panels, stretched area = hung/(E₁ E₂); twine from two bars
 * a mesh. Wrap: rope laid turn on turn, π (d + t) for every t of bar. Lacing: three times the seams.
 *
 * @param locale how the lines write sizes; metric with a full stop unless said
 * @returns lines in the order of the design; masses [kg] where the tables know the material
 * @source the parts' own geometry; allowances are judgement
 */
export function billOfMaterials(
  pot: Pot,
  materials: Materials,
  locale: ReaderLocale = plainLocale,
): BillLine[] {
  const shape = shapeOf(pot.body)
  const lines = [
    ...barLines(pot, materials, shape, locale),
    ...ballastLines(pot),
    ...nettingLines(pot, materials, shape, locale),
    ...wrapLines(pot, shape, locale),
    ...fittings(pot, materials, shape, locale),
    ...tackle(pot, materials, locale),
  ]
  return lines.map((line) => priced(line, materials))
}

function barLines(pot: Pot, materials: Materials, shape: PotShape, locale: ReaderLocale): BillLine[] {
  const lines = frameMembers(pot, shape).map((member): BillLine => {
    const quantity = member.pieceLengthM * member.count
    const diameterMm = Math.round(member.diameterM * 1e5) / 100
    const perM = barMassPerM(materials, member.material, diameterMm)
    return {
      part: member.role,
      what: `${roleWords[member.role]}, ${nameOf(materials, member.material)} ${formatNominal(diameterMm, locale)}`,
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

function nettingLines(pot: Pot, materials: Materials, shape: PotShape, locale: ReaderLocale): BillLine[] {
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
      what: `Netting ${netting.material} ${formatNominal(netting.twineDiameterMm, locale)}, bar ${formatNominal(netting.barLengthMm, locale)}, ${form.square ? 'as laid' : 'stretched'}`,
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
function wrapLines(pot: Pot, shape: PotShape, locale: ReaderLocale): BillLine[] {
  const kind = pot.chafe?.kind
  return frameMembers(pot, shape)
    .filter((member) => member.wrapM > 0)
    .map((member) => {
      const bar = member.pieceLengthM * member.count
      const hose = kind === 'hose'
      const inner = formatNominal(Math.round(member.diameterM * 1000), locale)
      const thick = formatNominal(Math.round(member.wrapM * 1000), locale)
      return {
        part: 'chafe',
        what: hose
          ? `Hose over the ${member.role}, ${inner} inside, ${thick} wall`
          : `Wrap of ${thick} rope on the ${member.role}`,
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

const nameOf = (materials: Materials, id: string) =>
  materials.solids.find((solid) => solid.id === id)?.name.toLowerCase() ?? id

const priceUnit = { m: 'metre', m2: 'square-metre', piece: 'piece', kg: 'kilogram' } as const

function priced(line: BillLine, materials: Materials): BillLine {
  const price = materials.prices.find((p) => p.id === line.materialId && p.each === priceUnit[line.unit])
  return price ? { ...line, priceEach: price.amount, currency: price.currency } : line
}
