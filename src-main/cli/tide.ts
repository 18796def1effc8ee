import { shippedStations } from '@main/services/stations/shipped'
import { waterConstants } from '@main/services/stations/water-constants'
import type { WaterConstants } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'
import { daylight } from '@shared/tides/daylight'
import { dayAt } from '@shared/tides/local-time'
import { positionOf, waterZone } from '@shared/tides/place'
import { predictWater, waterDays } from '@shared/tides/predict-water'
import { type Command, CommandRefused, type Terminal } from './command'
import { parseOptions } from './options'
import { readWater } from './read-input'
import { tideJson } from './tide-json'
import { tideText } from './tide-text'
import { unitsFrom, wholeFrom } from './option-values'

/** Height and current of one water over some days. */
export const tide: Command = {
  name: 'tide',
  does: 'height and current at a water, slacks, and when a pot holds and shows its float',
  usage: 'potwright tide WATER [--from DATE] [--days N] [--units metric|imperial] [--json]',
  async run(args, terminal) {
    const { values, positionals } = parseOptions(args, {
      from: { type: 'string' },
      days: { type: 'string' },
      units: { type: 'string' },
      json: { type: 'boolean' },
    })
    const [path, extra] = positionals
    if (path === undefined || extra !== undefined) throw new CommandRefused('tide takes one water')
    const days = wholeFrom(values.days, 'days', 1, 30, 2)
    const units = unitsFrom(values.units)
    const water = await readWater(path, terminal)
    const constants = await constantsOf(water)
    const span = daysFrom(water, constants, values.from, days, terminal)
    const prediction = predictWater(water, constants, span, 600)
    const position = positionOf(water, constants)
    const light = position ? daylight(span, prediction.zone, position) : []
    terminal.write(
      values.json
        ? `${JSON.stringify(tideJson(water, constants, prediction, light), undefined, 2)}\n`
        : `${water.name}\n${tideText(prediction, light, units)}\n`,
    )
    return prediction.missing.length === 0 ? 0 : 1
  },
}

/** Constants of the stations that a water names; one that is not there ends the command. */
export async function constantsOf(water: Water): Promise<WaterConstants> {
  const { tide: height, current } = water
  const found = waterConstants(await shippedStations(), {
    tide: height?.source === 'station' ? height.id : undefined,
    current: current?.source === 'station' ? current.id : undefined,
  })
  if (!found.ok) throw CommandRefused.from(found.error, water.name)
  return found.value
}

/** Whole days by the water's own clock, from the day named or from today. */
export function daysFrom(
  water: Water,
  constants: WaterConstants,
  from: string | undefined,
  days: number,
  terminal: Terminal,
) {
  const today = dayAt(waterZone(water, constants), terminal.now().getTime())
  const span = waterDays(water, constants, from ?? today, days)
  if (!span.ok) throw CommandRefused.from(span.error, water.name)
  return span.value
}
