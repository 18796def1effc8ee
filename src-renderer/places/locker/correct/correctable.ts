import {
  baitStates,
  gradeNumbers,
  storagePlaceNames,
  type EventKind,
  type JournalEvent,
} from '@shared/schema/journal'
import { baitWords, gradeWords, storageWords } from '@renderer/gear/gear-words'

/** One field of an event that may have been written down wrong. */
export type CorrectableField =
  | { readonly name: string; readonly label: string; readonly as: 'count' | 'text' | 'moment' }
  | {
      readonly name: string
      readonly label: string
      readonly as: 'number'
      readonly unit: string
      readonly min: number
      readonly max: number
    }
  | {
      readonly name: string
      readonly label: string
      readonly as: 'choice'
      readonly options: readonly {
        readonly value: string
        readonly label: string
        readonly said: string | number
      }[]
    }

const note: CorrectableField = { name: 'note', label: 'Note', as: 'text' }
const grade: CorrectableField = {
  name: 'grade',
  label: 'Grade',
  as: 'choice',
  options: gradeNumbers.map((value) => ({ value: String(value), label: gradeWords(value), said: value })),
}
const bait: CorrectableField = {
  name: 'baitLeft',
  label: 'Bait left',
  as: 'choice',
  options: baitStates.map((value) => ({ value, label: baitWords[value], said: value })),
}
const where: CorrectableField = {
  name: 'where',
  label: 'Where',
  as: 'choice',
  options: storagePlaceNames.map((value) => ({ value, label: storageWords[value], said: value })),
}
const broken: CorrectableField = { name: 'brokenBars', label: 'Broken bars in a row', as: 'count' }
const money = (name: string, label: string): CorrectableField => ({
  name,
  label,
  as: 'number',
  unit: '',
  min: 0,
  max: 1e6,
})

const own: Partial<Record<EventKind, readonly CorrectableField[]>> = {
  set: [
    { name: 'bait', label: 'Bait', as: 'text' },
    { name: 'depthM', label: 'Depth', as: 'number', unit: 'm', min: 0, max: 400 },
    { name: 'temperatureC', label: 'Water', as: 'number', unit: '°C', min: -2, max: 40 },
  ],
  haul: [
    { name: 'kept', label: 'Kept', as: 'count' },
    { name: 'undersized', label: 'Undersized', as: 'count' },
    { name: 'female', label: 'Female', as: 'count' },
    { name: 'other', label: 'Other', as: 'count' },
    bait,
  ],
  inspect: [
    grade,
    { name: 'diameterLossPct', label: 'Diameter lost', as: 'number', unit: '%', min: 0, max: 100 },
    broken,
  ],
  repair: [{ name: 'what', label: 'What was done', as: 'text' }, money('cost', 'Cost'), broken],
  replace: [],
  store: [where],
  clean: [],
  lose: [],
  find: [],
  retire: [],
  stock: [
    { name: 'counted', label: 'Counted', as: 'number', unit: '', min: 0, max: 1e6 },
    { name: 'change', label: 'Added or taken', as: 'number', unit: '', min: -1e6, max: 1e6 },
  ],
  price: [money('each', 'Price')],
}

/** What may be corrected in an event: the time it happened, what it says, and its note. */
export function correctableFields({ kind }: JournalEvent): readonly CorrectableField[] {
  const fields = own[kind]
  if (!fields) return []
  const plain: CorrectableField[] = kind === 'repair' || kind === 'price' ? [] : [note]
  return [{ name: 'at', label: 'When', as: 'moment' }, ...fields, ...plain]
}

export const isCorrectable = (event: JournalEvent) => correctableFields(event).length > 0
