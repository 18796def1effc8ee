import * as v from 'valibot'

/*
 * A tide or current station as the program hands it on: who measured it, under which licence, and the constants
 * from which it is predicted. Heights in metres above the station's chart datum, speeds in metres a second.
 */

export const stationKinds = ['tide', 'current'] as const
export type StationKind = (typeof stationKinds)[number]

export const StationSchema = v.strictObject({
  id: v.string(),
  kind: v.picklist(stationKinds),
  name: v.string(),
  /** Nearest town or water body, region and country, as one line. */
  place: v.string(),
  latitudeDeg: v.number(),
  longitudeDeg: v.number(),
  timeZone: v.string(),
  /** Predicted from a reference station by offsets. */
  subordinate: v.boolean(),
  publisher: v.string(),
  attribution: v.string(),
  licence: v.string(),
  licenceUrl: v.string(),
})

/** Name, amplitude [m or m/s] and phase lag on Greenwich [degrees]. */
const constituent = v.tuple([v.string(), v.number(), v.number()])

const TideConstantsSchema = v.strictObject({
  station: StationSchema,
  datum: v.string(),
  /** Mean sea level above the datum [m]. */
  meanLevelM: v.number(),
  constituents: v.array(constituent),
  /** Last year of the records behind the constants, where the source says so. */
  recordsEnd: v.optional(v.number()),
  offsets: v.optional(
    v.strictObject({
      reference: v.string(),
      highMinutes: v.number(),
      lowMinutes: v.number(),
      /** Ratios multiply heights above the datum; fixed offsets are metres added to them. */
      kind: v.picklist(['ratio', 'fixed']),
      high: v.number(),
      low: v.number(),
    }),
  ),
})

const CurrentConstantsSchema = v.strictObject({
  station: StationSchema,
  /** Where the flood and the ebb run to, degrees true. */
  floodDeg: v.optional(v.number()),
  ebbDeg: v.optional(v.number()),
  /** Steady flow under the tide, positive with the flood [m/s]. */
  meanFlowMps: v.number(),
  constituents: v.array(constituent),
  offsets: v.optional(
    v.strictObject({
      reference: v.string(),
      slackBeforeFloodMinutes: v.number(),
      slackBeforeEbbMinutes: v.number(),
      floodMinutes: v.number(),
      ebbMinutes: v.number(),
      floodRatio: v.number(),
      ebbRatio: v.number(),
    }),
  ),
})

/** What a water's stations bring to its prediction; a source that is typed in needs nothing here. */
export const WaterConstantsSchema = v.strictObject({
  tide: v.optional(TideConstantsSchema),
  current: v.optional(CurrentConstantsSchema),
})

export type Station = v.InferOutput<typeof StationSchema>
export type Constituent = v.InferOutput<typeof constituent>
export type TideConstants = v.InferOutput<typeof TideConstantsSchema>
export type CurrentConstants = v.InferOutput<typeof CurrentConstantsSchema>
export type WaterConstants = v.InferOutput<typeof WaterConstantsSchema>
