import type { BillLine } from '@shared/design/bill-of-materials'
import type { BarCut, PanelCut } from '@shared/design/cut-list'
import { solidById } from '@shared/design/materials/lookup'
import type { Materials } from '@shared/schema/materials'
import { reader } from '@renderer/ui/reader.svelte'
import { roleWords } from '../parts/words'
import { cutWords as w, panelShapeText } from './cut-words'

/* Columns of the parts list and the cut lists, the same on the screen and on paper. */

const roleName = (role: string) => roleWords[role as keyof typeof roleWords] ?? role

export const billColumns = [
  { key: 'what', label: w.part, text: (line: BillLine) => line.what },
  {
    key: 'quantity',
    label: w.quantity,
    number: true,
    text: (line: BillLine) =>
      line.unit === 'piece' ? w.pieceCount(line.quantity) : reader.say(line.quantity, line.unit),
  },
  {
    key: 'mass',
    label: w.mass,
    number: true,
    text: (line: BillLine) => (line.massKg === undefined ? w.unknown : reader.say(line.massKg, 'kg')),
    sort: (line: BillLine) => line.massKg ?? 0,
  },
]

export const barColumns = (materials: Materials) => [
  {
    key: 'role',
    label: w.bar,
    text: (cut: BarCut) =>
      `${roleName(cut.role)}, ${(solidById(materials, cut.material)?.name ?? cut.material).toLowerCase()}`,
  },
  {
    key: 'diameter',
    label: w.diameter,
    number: true,
    text: (cut: BarCut) => reader.say(cut.diameterM * 1000, 'mm'),
  },
  { key: 'count', label: w.pieces, number: true, text: (cut: BarCut) => String(cut.count) },
  { key: 'length', label: w.each, number: true, text: (cut: BarCut) => reader.say(cut.lengthM * 1000, 'mm') },
  {
    key: 'bent',
    label: w.bentTo,
    number: true,
    text: (cut: BarCut) => (cut.bentToM === undefined ? '' : reader.say(cut.bentToM * 1000, 'mm')),
  },
]

export const panelColumns = [
  {
    key: 'name',
    label: w.panel,
    text: (cut: PanelCut) => `${cut.name}${cut.count > 1 ? `, ${cut.count}` : ''}`,
  },
  { key: 'shape', label: w.shape, text: panelShapeText },
  {
    key: 'meshes',
    label: w.meshes,
    number: true,
    text: (cut: PanelCut) => `${cut.meshesLong} by ${cut.meshesDeep}`,
  },
]
