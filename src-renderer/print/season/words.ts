/** Words of the season's sheets. */
export const seasonSheetWords = {
  pots: (numbers: readonly string[]) =>
    numbers.length === 1 ? `Pot ${numbers[0] ?? ''}` : `${numbers.length} pots`,
  list: (months: number) => (months === 1 ? 'The next month' : `The next ${months} months`),
  todo: 'To do',
  pot: 'Pots',
  what: 'What',
  by: 'By',
  done: 'Done',
  buy: 'To buy',
  bought: 'Bought',
  nothing: 'Nothing is due in that time.',
  nothingToBuy: 'Nothing has to be bought.',
  total: (money: string) => `Together ${money}, where prices are known.`,
} as const
