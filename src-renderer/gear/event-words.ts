import type { LockerState } from '@shared/journal/locker-state'
import type { EventKind, JournalEvent } from '@shared/schema/journal'
import { reader } from '@renderer/ui/reader.svelte'
import { baitWords, damageWords, partKindWords, reasonWords, storageWords } from './gear-words'
import { sayMoney } from './say'

/** What kind of thing happened. */
export const eventKindWords: Record<EventKind, string> = {
  'add-pots': 'Added',
  set: 'Set',
  haul: 'Hauled',
  inspect: 'Looked at',
  repair: 'Mended',
  replace: 'Replaced',
  clean: 'Cleaned',
  store: 'Stored',
  lose: 'Lost',
  find: 'Found',
  retire: 'Retired',
  'swap-part': 'Moved part',
  photo: 'Photo',
  stock: 'Stock',
  price: 'Price',
  correct: 'Corrected',
  undo: 'Taken back',
}

/** What an event says, in a line: facts with commas between. */
export function sayEvent(event: JournalEvent, state: LockerState): string {
  return factsOf(event, state)
    .filter((fact) => fact !== undefined && fact !== '')
    .join(', ')
}

/** The pot or part an event is about, in a word. */
export function subjectOf(event: JournalEvent, state: LockerState): string {
  if ('pot' in event) return potName(state, event.pot)
  if ('part' in event) {
    const part = state.parts[event.part]
    return part ? `${partKindWords[part.part.kind]}, ${potName(state, part.pot).toLowerCase()}` : 'A part'
  }
  return ''
}

const potName = (state: LockerState, id: string) => `Pot ${state.pots[id]?.number ?? 'unknown'}`

const count = (value: number | undefined, word: string) =>
  value === undefined ? undefined : `${value} ${word}`

function factsOf(event: JournalEvent, state: LockerState): (string | undefined)[] {
  switch (event.kind) {
    case 'add-pots': {
      const numbers = event.pots.map(({ number }) => number)
      return [
        numbers.length > 6
          ? `${numbers[0] ?? ''} to ${numbers.at(-1) ?? ''}, ${numbers.length} pots`
          : numbers.join(', '),
      ]
    }
    case 'set':
      return [event.bait, event.note]
    case 'haul':
      return [
        count(event.kept, 'kept'),
        // That there was none of a kind is only worth saying of what was kept.
        count(event.undersized || undefined, 'undersized'),
        count(event.female || undefined, 'female'),
        count(event.other || undefined, 'other'),
        event.baitLeft && `bait left: ${baitWords[event.baitLeft].toLowerCase()}`,
        event.damage && event.damage.length > 0
          ? `damage: ${event.damage.map((kind) => damageWords[kind].toLowerCase()).join(', ')}`
          : undefined,
        event.note,
      ]
    case 'inspect':
      return [
        event.grade === undefined ? undefined : `grade ${event.grade}`,
        event.diameterLossPct === undefined
          ? undefined
          : `${reader.field(event.diameterLossPct, '')} % of the diameter gone`,
        count(event.brokenBars, 'broken bars'),
        event.note,
      ]
    case 'repair':
      return [event.what, event.cost === undefined ? undefined : sayMoney(event.cost)]
    case 'replace':
      return [reasonWords[event.reason].toLowerCase(), event.with.material, event.note]
    case 'store':
      return [storageWords[event.where].toLowerCase(), event.note]
    case 'swap-part':
      return [`to ${potName(state, event.to).toLowerCase()}`, event.note]
    case 'photo':
      return [event.caption]
    case 'stock':
      return [
        event.item,
        event.counted === undefined
          ? event.change === undefined
            ? undefined
            : `${event.change > 0 ? '+' : ''}${reader.field(event.change, '')}`
          : `counted ${reader.field(event.counted, '')}`,
        event.note,
      ]
    case 'price':
      return [event.item, `${sayMoney(event.each)} a ${event.per}`, event.supplierNote]
    case 'correct':
      return [Object.keys(event.fields).join(', '), event.note]
    default:
      return [event.note]
  }
}
