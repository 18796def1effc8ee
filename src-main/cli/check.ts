import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { extremesOf, predictWater } from '@shared/tides/predict-water'
import { fullCheck } from '@shared/verdicts/full-check'
import { checkText } from './check-text'
import { type Command, CommandRefused, type Terminal } from './command'
import { nameIssues } from './design-issues'
import { localeFrom } from './option-values'
import { parseOptions } from './options'
import { readPot, readTrip, readWater } from './read-input'
import { constantsOf, daysFrom } from './tide'
import { figuresFor, packsFor } from './user-data'

// Without a date the strongest of a spring and a neap counts.
const daysWithoutDate = 15

/** The six verdicts on one pot. */
export const check: Command = {
  name: 'check',
  does: 'whether a pot is legal, holds, shows its float, lifts, fishes and stows',
  usage:
    'potwright check POT [--water WATER] [--trip TRIP] [--region R] [--units metric|imperial] [--data DIR] [--json]',
  async run(args, terminal) {
    const { values, positionals } = parseOptions(args, {
      water: { type: 'string' },
      trip: { type: 'string' },
      region: { type: 'string' },
      units: { type: 'string' },
      data: { type: 'string' },
      json: { type: 'boolean' },
    })
    const [path, extra] = positionals
    if (path === undefined || extra !== undefined) throw new CommandRefused('check takes one pot')
    const locale = localeFrom(values.units)
    const pot = await readPot(path, terminal)
    const water = values.water === undefined ? undefined : await readWater(values.water, terminal)
    const given = values.trip === undefined ? undefined : await readTrip(values.trip, terminal)
    const trip = tripOf(given, water, values.region)
    const packs = await packsFor(terminal, values.data)
    const pack = packs.find(({ region }) => region === trip?.region)?.pack
    if (values.region !== undefined && !pack)
      throw new CommandRefused(`there are no rules for ${values.region}`, 'region')
    const figures = await figuresFor(terminal, values.data)
    nameIssues(pot, { materials: figures.materials, locale }, path, terminal)
    const found = fullCheck({
      pot,
      ...figures,
      locale,
      today: terminal.now().toISOString().slice(0, 10),
      ...(trip ? { trip } : {}),
      ...(water ? { water, predicted: await predicted(water, trip, terminal) } : {}),
      ...(pack ? { pack } : {}),
    })
    terminal.write(
      values.json ? `${JSON.stringify(found, undefined, 2)}\n` : checkText(pot.name, found, locale),
    )
    return found.overall === 'holds' ? 0 : 1
  },
}

/** The trip as given; what it leaves out of the place is taken from the water, and `--region` goes before both. */
function tripOf(
  given: Trip | undefined,
  water: Water | undefined,
  region: string | undefined,
): Trip | undefined {
  const place = region ?? given?.region ?? water?.region
  if (given === undefined && place === undefined) return undefined
  const zone = given?.zone ?? (place === water?.region ? water?.zone : undefined)
  return {
    ...(given ?? { format: 'potwright/trip', version: 1 }),
    ...(place === undefined ? {} : { region: place }),
    ...(zone === undefined ? {} : { zone }),
  }
}

/** The strongest stream and extreme heights while the pot is down. */
async function predicted(water: Water, trip: Trip | undefined, terminal: Terminal) {
  const constants = await constantsOf(water)
  const days = trip?.date === undefined ? daysWithoutDate : 1 + Math.ceil((trip.soakH ?? 0) / 24)
  const span = daysFrom(water, constants, trip?.date, days, terminal)
  return extremesOf(predictWater(water, constants, span, 600))
}
