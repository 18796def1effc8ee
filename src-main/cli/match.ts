import { matchCells, ranked, type MatchCell, type MatchSetting } from '@shared/match/match'
import { matchWater } from '@shared/match/match-water'
import type { Water } from '@shared/schema/water'
import { type Command, CommandRefused, type Terminal } from './command'
import { matchText } from './match-text'
import { localeFrom, wholeFrom } from './option-values'
import { parseOptions } from './options'
import { readPot, readTrip, readWater } from './read-input'
import { constantsOf, daysFrom } from './tide'
import { figuresFor, packsFor } from './user-data'

/** Every pot against every water. */
export const match: Command = {
  name: 'match',
  does: 'every pot against every water: share of the tide, margin, ring needed, legal or not, ranked',
  usage:
    'potwright match POT… --water WATER [--water WATER]… [--trip TRIP] [--from DATE] [--days N] [--units metric|imperial] [--data DIR] [--json]',
  async run(args, terminal) {
    const { values, positionals } = parseOptions(args, {
      water: { type: 'string', multiple: true },
      trip: { type: 'string' },
      from: { type: 'string' },
      days: { type: 'string' },
      units: { type: 'string' },
      data: { type: 'string' },
      json: { type: 'boolean' },
    })
    if (positionals.length === 0) throw new CommandRefused('match takes at least one pot')
    if (!values.water) throw new CommandRefused('match takes at least one --water', 'water')
    const days = wholeFrom(values.days, 'days', 1, 400, 30)
    const locale = localeFrom(values.units)
    const pots = await inTurn(positionals, (path) => readPot(path, terminal))
    const waters = await inTurn(values.water, (path) => readWater(path, terminal))
    const trip = values.trip === undefined ? undefined : await readTrip(values.trip, terminal)
    const packs = await packsFor(terminal, values.data)
    const setting: MatchSetting = {
      ...(await figuresFor(terminal, values.data)),
      locale,
      today: terminal.now().toISOString().slice(0, 10),
      packFor: ({ region }) => packs.find((pack) => pack.region === region)?.pack,
      ...(trip && { trip }),
    }
    const places = await inTurn(waters, (water) => placeOf(water, values.from, days, terminal))
    const cells = [...matchCells(pots, places, setting)]
    terminal.write(
      values.json
        ? `${JSON.stringify(matchJson(waters, cells), undefined, 2)}\n`
        : matchText(pots, waters, cells, locale),
    )
    return cells.every(({ overall }) => overall === 'holds') ? 0 : 1
  },
}

async function placeOf(water: Water, from: string | undefined, days: number, terminal: Terminal) {
  const constants = await constantsOf(water)
  return matchWater(water, constants, daysFrom(water, constants, from, days, terminal))
}

const matchJson = (waters: readonly Water[], cells: readonly MatchCell[]) => ({
  format: 'potwright/match',
  version: 1,
  waters: waters.map(({ id, name }) => ({
    id,
    name,
    cells: ranked(cells.filter(({ waterId }) => waterId === id)),
  })),
})

/** One after the other: standard input can be read only once, and the first fault is the one to report. */
async function inTurn<From, To>(items: readonly From[], each: (item: From) => Promise<To>): Promise<To[]> {
  const done: To[] = []
  for (const item of items) done.push(await each(item))
  return done
}
