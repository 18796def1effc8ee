import type { DueAction } from '@shared/season/due'
import type { AssumptionStanding } from '@shared/schema/assumption'

/** Words of the Season. */
export const seasonWords = {
  title: 'Season',
  loading: 'Reading the locker',
  empty: 'What to inspect, replace and buy before the season',
  emptyText: 'The lists come from the pots in the Locker and what they have been through.',
  toLocker: 'Go to the Locker',
  ahead: 'The gear must last',
  months: (count: number) => `${count} months`,
  tabs: 'Lists of the season',
  todo: 'To do',
  sheets: 'Inspection sheets',
  buy: 'To buy',
  money: 'Money',
  figures: 'Figures',
  judging: 'Working out how the parts stand',
} as const

export const todoWords = {
  show: 'Show',
  all: 'Everything',
  actions: { replace: 'To replace', inspect: 'To look at', clean: 'To clean' } satisfies Record<
    DueAction,
    string
  >,
  group: (action: DueAction, part: string, count: number) => {
    const pots = count === 1 ? '1 pot' : `${count} pots`
    if (action === 'clean') return `Dry out and clean ${pots}`
    return action === 'replace' ? `Replace the ${part} on ${pots}` : `Look at the ${part} of ${pots}`
  },
  by: (day: string) => `by ${day}`,
  now: 'now',
  why: 'Each pot, and why',
  done: 'Done',
  doneLabel: (what: string, number: string) => `Done: ${what} of pot ${number}`,
  allDone: (count: number) => (count === 1 ? 'Done' : `All ${count} done`),
  other: 'Another kind of part',
  otherLabel: (part: string, number: string) => `Another kind of part: ${part} of pot ${number}`,
  mend: 'Mended',
  mendLabel: (part: string, number: string) => `Mended: ${part} of pot ${number}`,
  look: 'Look at it',
  lookLabel: (part: string, number: string) => `Look at it: ${part} of pot ${number}`,
  replaced: (part: string, count: number) =>
    count === 1 ? `${part} replaced.` : `${part} replaced on ${count} pots.`,
  cleaned: (count: number) => (count === 1 ? '1 pot is clean.' : `${count} pots are clean.`),
  none: 'Nothing is due in that time.',
  print: 'Print the list',
  table: 'For a spreadsheet',
} as const

export const sheetWords = {
  pot: 'Pot',
  print: 'Print this sheet',
  printAll: (count: number) => `Print all ${count}`,
  lookFor: 'Look for',
  discardIf: 'Discard if',
  last: (day: string) => `Last looked at ${day}`,
  never: 'Never looked at',
  found: 'Found',
  write: 'Write down',
  writeLabel: (part: string) => `Write down what was found on the ${part}`,
  none: 'No pot in use has parts to look at.',
  sheetOf: (number: string) => `Inspection sheet, pot ${number}`,
} as const

export const buyWords = {
  caption: 'What to buy',
  item: 'Item',
  needed: 'Needed',
  inHand: 'In hand',
  toBuy: 'To buy',
  cost: 'Cost',
  noPrice: 'No price',
  noLength: 'No length',
  coils: (count: number) => (count === 1 ? '1 coil' : `${count} coils`),
  unmeasured: (count: number) => `and ${count} of unknown length`,
  total: 'Total',
  unpriced: (count: number) => (count === 1 ? '1 line has no price' : `${count} lines have no price`),
  none: 'Nothing is to be replaced, so there is nothing to buy.',
  stock: 'Stock and prices',
  stockHint: 'Everything your pots are made of, what lies in the shed and what it costs.',
  change: 'Change',
  changeLabel: (item: string) => `Change stock and price of ${item}`,
  counted: 'Counted in stock',
  price: 'Price',
  per: 'For a',
  perWords: { piece: 'Piece', metre: 'Metre', coil: 'Coil', panel: 'Panel' },
  coilM: 'Metres on a coil',
  supplier: 'Where from',
  write: 'Write down',
  written: (item: string) => `${item} written down.`,
  coilNeeded: 'Say how much is on a coil.',
  pricedAt: (price: string, per: string) => `${price} a ${per.toLowerCase()}`,
  table: 'For a spreadsheet',
} as const

export const moneyWords = {
  newParts: 'New parts now',
  leftToBuy: (sum: string, unpriced: number) =>
    `Every part due at its price, in hand or not. Left to buy, less what is in hand and in whole coils: ${sum}${
      unpriced === 0
        ? ''
        : `, without ${unpriced === 1 ? 'one line' : `${unpriced} lines`} that ${unpriced === 1 ? 'has' : 'have'} no price`
    }.`,
  withPlan: 'Failures to expect, with the plan',
  without: 'Failures to expect, changing on failure only',
  saves: (amount: string) => `Over these months the plan saves about ${amount} against waiting for failures.`,
  costs: (amount: string) =>
    `Over these months the plan costs about ${amount} more than waiting for failures. What an inspection discards is changed all the same, and what a lost pot does to the ground is not counted.`,
  noPrices:
    'Nothing that is due has a price yet, so the plan cannot be weighed against waiting for failures.',
  unknown: (count: number) =>
    count === 1
      ? '1 part due has no price and is in no sum.'
      : `${count} parts due have no price and are in no sum.`,
  estimate: 'Estimates from the chances of each part; give prices under To buy.',
  budget: 'Money to spend',
  budgetHint:
    'Release cord comes first, then what spares most for its price. A part in hand takes its price as well.',
  first: (sum: string) => `First, for ${sum}`,
  later: 'Later',
  part: 'Part',
  pot: 'Pot',
  price: 'Price',
  spares: 'Spares',
  chance: 'Chance of failing',
  best: 'Costs least changed at',
  onFailure: 'on failure',
  noBudget: 'Give a sum to see what to do first.',
  notPriced: 'No price',
} as const

export const figureWords = {
  explain:
    'Every figure behind the estimates of wear and fishing, with its spread and where it comes from. Change what you know better; your inspections and failures correct the rest.',
  wear: 'Wear',
  fishing: 'Fishing',
  find: 'Find a figure',
  label: 'Figure',
  value: 'Value',
  range: 'Range',
  source: 'Where from',
  reset: 'Back',
  resetLabel: (label: string, value: string) => `Back to ${value}: ${label}`,
  resetAll: 'All back to the shipped figures',
  isReset: 'The shipped figures are in use again.',
  wasReset: (label: string) => `${label} is back to the shipped figure.`,
  learned: 'Learned from your own record',
  learnedHint:
    'A part that failed counts as an end; one still good, or taken out good, only says that it lasted so long.',
  likeness: 'Part',
  failed: 'Failed',
  good: 'Still good or taken out good',
  usual: 'Usual life',
  believed: 'Believed now',
  nothingLearned: 'No part has been in use long enough yet.',
  noFailures:
    'None of your parts has failed yet, so usual lives are taken. Say “It failed in use” when you replace one, and what is believed follows.',
  moved: (part: string, failed: number, all: number, usual: string, believed: string) =>
    `${failed} of your ${all} failed: ${part.toLowerCase()} is taken to last ${believed} instead of ${usual}.`,
  hardlyMoved: (part: string, failed: number, all: number, believed: string) =>
    `${failed} of your ${all} failed: ${part.toLowerCase()} is still taken to last ${believed}. A few parts barely move it.`,
  range2: (low: string, high: string) => `${low} to ${high}`,
} as const

export const standingWords: Record<AssumptionStanding, string> = {
  read: 'Read at the source',
  memory: 'Recalled',
  derived: 'Worked out',
  assumed: 'Assumed',
  user: 'Yours',
}
