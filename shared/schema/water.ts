import * as v from 'valibot'
import { bearingDeg, id, name, numberBetween, regionCode, slug } from './fields'

/* A place that is fished, `*.water.json`. Depths are at chart datum; speeds are at the surface. */

export const bottoms = ['mud', 'silt', 'silty-sand', 'sand', 'rippled-sand', 'gravel', 'rock'] as const
export type Bottom = (typeof bottoms)[number]

const stationId = v.pipe(
  v.string(),
  v.regex(/^[a-z0-9-]+\/[A-Za-z0-9_.:@-]+$/, 'must be a station like noaa/9447130'),
)

const tide = v.variant('source', [
  v.strictObject({ source: v.literal('station'), id: stationId }),
  v.strictObject({
    source: v.literal('range'),
    springM: numberBetween(0, 18),
    neapM: v.optional(numberBetween(0, 18)),
  }),
])

const current = v.variant('source', [
  v.strictObject({ source: v.literal('station'), id: stationId }),
  v.strictObject({
    source: v.literal('rate'),
    springMps: numberBetween(0, 6),
    neapMps: v.optional(numberBetween(0, 6)),
    /** Hours by which slack follows high and low water. */
    lagH: v.optional(numberBetween(-6.5, 6.5)),
    floodDeg: v.optional(bearingDeg),
  }),
  v.strictObject({ source: v.literal('fixed'), mps: numberBetween(0, 6) }),
])

export const WaterSchema = v.strictObject({
  format: v.literal('potwright/water'),
  version: v.literal(1),
  id,
  name,
  region: v.optional(regionCode),
  zone: v.optional(slug),
  latitudeDeg: v.optional(numberBetween(-90, 90)),
  longitudeDeg: v.optional(numberBetween(-180, 180)),
  timeZone: v.optional(v.pipe(v.string(), v.maxLength(60))),
  depthM: numberBetween(0, 400),
  bottom: v.optional(v.picklist(bottoms)),
  tide: v.optional(tide),
  current: v.optional(current),
  /** Allowance for wind drift, added to the strongest surface current. */
  windMps: v.optional(numberBetween(0, 40)),
  waves: v.optional(v.strictObject({ heightM: numberBetween(0, 8), periodS: numberBetween(1, 25) })),
  /** Narrowest width of the waterway; some rules depend on it. */
  widthM: v.optional(numberBetween(1, 100000)),
  temperatureC: v.optional(numberBetween(-2, 40)),
  salinityPsu: v.optional(numberBetween(0, 42)),
  notes: v.optional(v.pipe(v.string(), v.maxLength(4000))),
})

export type Water = v.InferOutput<typeof WaterSchema>
