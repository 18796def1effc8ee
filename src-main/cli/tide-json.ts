import type { PotWindows, WorkWindow } from '@shared/match/windows'
import type { WaterConstants } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'
import type { TimeSpan } from '@shared/tides/local-time'
import type { WaterPrediction } from '@shared/tides/predict-water'

/** A prediction as a script reads it: moments in UTC, SI units, station credits. */
export function tideJson(
  water: Water,
  constants: WaterConstants,
  prediction: WaterPrediction,
  light: readonly TimeSpan[],
  windows?: PotWindows,
) {
  const { fromMs, toMs, stepS, zone, heightM, depthM, currentMps, driftMps, floodDeg, ebbDeg } = prediction
  return {
    format: 'potwright/tide',
    version: 1,
    water: { id: water.id, name: water.name },
    zone,
    timesKnown: prediction.timesKnown,
    ...span({ fromMs, toMs }),
    driftMps,
    floodDeg,
    ebbDeg,
    series: Array.from(depthM, (depth, i) => ({
      time: iso(fromMs + i * stepS * 1000),
      heightM: rounded(heightM?.[i]),
      depthM: rounded(depth),
      currentMps: rounded(currentMps?.[i]),
    })),
    highAndLowWater: prediction.heightEvents.map(({ kind, timeMs, heightM: height }) => ({
      kind,
      time: iso(timeMs),
      heightM: rounded(height),
    })),
    stream: prediction.streamEvents.map(({ kind, timeMs, mps, next }) => ({
      kind,
      time: iso(timeMs),
      currentMps: rounded(mps),
      next,
    })),
    daylight: light.map(span),
    windows: windows && windowsJson(windows),
    missing: prediction.missing,
    notes: prediction.notes,
    stations: [constants.tide, constants.current].flatMap((known) =>
      known
        ? [
            {
              id: known.station.id,
              name: known.station.name,
              attribution: known.station.attribution,
              licence: known.station.licence,
            },
          ]
        : [],
    ),
  }
}

const windowsJson = ({ holds, shows, both, set, haul, holdsThroughout }: PotWindows) => ({
  holds: holds?.map(span),
  shows: shows?.map(span),
  both: both.map(span),
  set: set && workJson(set),
  haul: haul && workJson(haul),
  holdsThroughout,
})

const workJson = ({ slackMs, strongestMps, ...window }: WorkWindow) => ({
  ...span(window),
  slack: slackMs === undefined ? undefined : iso(slackMs),
  inDaylight: window.inDaylight,
  strongestMps: rounded(strongestMps),
  courseAtStartDeg: rounded(window.courseAtStartDeg),
  courseAtEndDeg: rounded(window.courseAtEndDeg),
})

const span = ({ fromMs, toMs }: TimeSpan) => ({ from: iso(fromMs), to: iso(toMs) })
const iso = (timeMs: number) => new Date(timeMs).toISOString()
/** A millimetre, a millimetre a second or a thousandth of a degree is finer than anything known here. */
const rounded = (value: number | undefined) => (value === undefined ? undefined : Number(value.toFixed(3)))
