import type { PartName } from '@shared/schema/check'
import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import { formatNominal, formatQuantity } from '@shared/units/display'
import type { ReaderLocale } from '@shared/units/locale'
import { tieAllowanceM, type BillLine } from './bill-line'
import { baitHolderRow, cordMassPerM, ropeProperties } from './materials/lookup'
import { reachAt, type PotShape } from './shape'

const hooksPerDoor = 2

/** Flaps, hooks, gaps, bait holder, release cord and bridle. */
export function fittings(pot: Pot, materials: Materials, shape: PotShape, locale: ReaderLocale): BillLine[] {
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
        ? `Escape ring ${formatNominal(gap.diameterMm, locale)}`
        : `Escape gap ${formatNominal(gap.widthMm, locale)} × ${formatNominal(gap.heightMm, locale)}`,
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
      what: `Release cord${release.material ? `, ${release.material}` : ''}${release.diameterMm ? ` ${formatNominal(release.diameterMm, locale)}` : ''}`,
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

/** Rope, its weights, and the float. */
export function tackle(pot: Pot, materials: Materials, locale: ReaderLocale): BillLine[] {
  const lines: BillLine[] = []
  if (pot.rope) {
    const rope = ropeProperties(materials, pot.rope)
    lines.push({
      part: 'rope',
      what: `Rope ${pot.rope.material} ${formatNominal(pot.rope.diameterMm, locale)}, ${pot.rope.construction}`,
      quantity: pot.rope.lengthM,
      unit: 'm',
      ...(rope ? { massKg: rope.massKgPerM * pot.rope.lengthM } : {}),
      materialId: pot.rope.material.toLowerCase(),
    })
    for (const weight of pot.rope.weights ?? [])
      lines.push({
        part: 'rope',
        what: `Line weight, ${formatQuantity(weight.belowFloatM, 'm', locale)} below the float`,
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
          ? `Ball float ${formatNominal(float.diameterMm, locale)}`
          : `${float.shape === 'bullet' ? 'Bullet' : 'Cylinder'} float ${formatNominal(float.diameterMm, locale)} × ${formatNominal(float.lengthMm, locale)}`,
      quantity: 1,
      unit: 'piece',
      massKg: float.massKg,
      materialId: float.shape,
    })
  return lines
}
