import { potLimits, type PotLimits } from '@shared/match/pot-limits'
import { depthLadder } from '@shared/match/thresholds'
import { potWindows } from '@shared/match/windows'
import type { Pot } from '@shared/schema/pot'
import { conditionsAt } from '@shared/tides/conditions'
import { shippedStations } from '@main/services/stations/shipped'
import { waterConstants } from '@main/services/stations/water-constants'
import type { WaterConstants } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'
import { daylight } from '@shared/tides/daylight'
import { dayAt } from '@shared/tides/local-time'
import { positionOf, waterZone } from '@shared/tides/place'
import { extremesOf, predictWater, waterDays, type WaterPrediction } from '@shared/tides/predict-water'
import { type Command, CommandRefused, type Terminal } from './command'
import { parseOptions } from './options'
import { readPot, readWater } from './read-input'
import { tideJson } from './tide-json'
import { tideText, windowsText } from './tide-text'
import { localeFrom, wholeFrom } from './option-values'
import { figuresFor } from './user-data'

/** Height and current of one water over some days, and when a pot does its work there. */
export const tide: Command = {
  name: 'tide',
  does: 'height and current at a water, slacks, and when a pot holds and shows its float',
  usage:
    'potwright tide WATER [--from DATE] [--days N] [--pot POT] [--soak HOURS] [--units metric|imperial] [--data DIR] [--json]',
  async run(args, terminal) {
    const { values, positionals } = parseOptions(args, {
      from: { type: 'string' },
      days: { type: 'string' },
      pot: { type: 'string' },
      soak: { type: 'string' },
      units: { type: 'string' },
      data: { type: 'string' },
      json: { type: 'boolean' },
    })
    const [path, extra] = positionals
    if (path === undefined || extra !== undefined) throw new CommandRefused('tide takes one water')
    const days = wholeFrom(values.days, 'days', 1, 30, 2)
    const soakH = wholeFrom(values.soak, 'soak', 0, 720, 12)
    const locale = localeFrom(values.units)
    const water = await readWater(path, terminal)
    const pot = values.pot === undefined ? undefined : await readPot(values.pot, terminal)
    const constants = await constantsOf(water)
    const span = daysFrom(water, constants, values.from, days, terminal)
    const prediction = predictWater(water, constants, span, 600)
    const position = positionOf(water, constants)
    const light = position ? daylight(span, prediction.zone, position) : []
    const limits = pot && limitsAt(pot, await figuresFor(terminal, values.data), water, prediction)
    const windows = limits && potWindows(prediction, limits, light, soakH, terminal.now().getTime())
    const missing = [...prediction.missing, ...(limits?.missing ?? [])]
    if (values.json) {
      const reply = tideJson(water, constants, { ...prediction, missing }, light, windows)
      terminal.write(`${JSON.stringify(reply, undefined, 2)}\n`)
    } else {
      terminal.write(`${water.name}\n${tideText({ ...prediction, missing }, light, locale)}\n`)
      if (pot && windows) terminal.write(`\n${windowsText(pot.name, windows, prediction.zone, locale)}\n`)
    }
    return missing.length === 0 && (!windows || (windows.set && windows.haul)) ? 0 : 1
  },
}

/** Cautious limits of a pot over the depths of a prediction. */
function limitsAt(
  pot: Pot,
  { materials, coefficients }: Awaited<ReturnType<typeof figuresFor>>,
  water: Water,
  prediction: WaterPrediction,
): PotLimits {
  const { lowM = 0, highM = 0 } = extremesOf(prediction)
  const input = {
    pot,
    materials,
    coefficients,
    conditions: conditionsAt(water, extremesOf(prediction)),
  }
  return potLimits(input, 'cautious', depthLadder(water.depthM + lowM, water.depthM + highM))
}

/** Constants of the stations that a water names; one that is not there ends the command. */
export async function constantsOf(water: Water): Promise<WaterConstants> {
  const tide = water.tide?.source === 'station' ? water.tide.id : undefined
  const current = water.current?.source === 'station' ? water.current.id : undefined
  // Unpacking the stations takes longer than everything else a command does.
  if (tide === undefined && current === undefined) return {}
  const found = waterConstants(await shippedStations(), { tide, current })
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
