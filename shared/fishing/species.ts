import type { Confidence, Spread } from '@shared/schema/check'

/** The ways in which the size of a crab is taken, in our own words. */
export const crabMeasures = [
  'length',
  'tip-to-tip',
  'notch-to-notch',
  'inside-points',
  'greatest-width',
] as const
export type CrabMeasure = (typeof crabMeasures)[number]

/** Usual proportions of one species: estimates for fit and gaps, not for measuring a catch. */
export interface CrabSpecies {
  readonly slug: string
  readonly scientific: string
  readonly common: string
  /** Shell length over the width taken in each way. */
  readonly lengthPer: Partial<Record<Exclude<CrabMeasure, 'length'>, Spread>>
  readonly depthPerLength?: Spread
  readonly depthPerWidth?: Spread
  /** Width (in the measure named) of which half stay, over the clear diameter of a round ring. */
  readonly ring?: { readonly measure: CrabMeasure; readonly perDiameter: Spread }
  readonly source: string
  readonly confidence: Confidence
  /** Said beside every result for this species. */
  readonly caution?: string
}

const spread = (low: number, mid: number, high: number): Spread => ({ low, mid, high })

/** 0.54 give or take 6 %: C. japonica 27/50, and gaps of 46 mm for 85 mm and 36 mm for 65 mm shells. */
const portunidDepth = spread(0.508, 0.54, 0.572)
const portunidDepthSource =
  'depth from Charybdis japonica 27/50 mm (Yellow Sea vent study, abstract) and two New South Wales gap sizes'

export const crabSpecies: readonly CrabSpecies[] = [
  {
    slug: 'scylla-serrata',
    scientific: 'Scylla serrata',
    common: 'mud crab',
    lengthPer: { 'tip-to-tip': spread(0.64, 0.68, 0.72), 'greatest-width': spread(0.64, 0.68, 0.72) },
    depthPerLength: portunidDepth,
    source: `length over width recalled, range within data of Croos and others 2024, U.P. J. Zool. 45(24):166-183; ${portunidDepthSource}`,
    confidence: 'memory',
  },
  {
    slug: 'portunus-armatus',
    scientific: 'Portunus armatus',
    common: 'blue swimmer crab',
    lengthPer: { 'tip-to-tip': spread(0.44, 0.47, 0.5), 'notch-to-notch': spread(0.555, 0.59, 0.625) },
    depthPerLength: portunidDepth,
    source: `length over width recalled; notch over tip width 0.795 from Rasheed and others 2021, Pak. J. Zool. 53:295-303 (abstract); ${portunidDepthSource}`,
    confidence: 'memory',
  },
  {
    slug: 'callinectes-sapidus',
    scientific: 'Callinectes sapidus',
    common: 'blue crab',
    lengthPer: { 'tip-to-tip': spread(0.4, 0.43, 0.47) },
    depthPerLength: portunidDepth,
    ring: { measure: 'tip-to-tip', perDiameter: spread(2.106, 2.13, 2.164) },
    source: `ring from the cull-ring study of 2016 (abstract), males; length over width worked back from it; depth taken as in other swimming crabs, not checked`,
    confidence: 'derived',
    caution: 'Ring figures are for males; half of the females leave at widths 4 to 7 mm larger.',
  },
  {
    slug: 'metacarcinus-magister',
    scientific: 'Metacarcinus magister',
    common: 'Dungeness crab',
    lengthPer: { 'inside-points': spread(0.6, 0.65, 0.7) },
    ring: { measure: 'inside-points', perDiameter: spread(1.3, 1.35, 1.389) },
    source:
      'length over width recalled, not checked; ring bounded by Stearns and others 2017, N. Am. J. Fish. Manage. (abstract): 114.3 mm rings lost no legal males that could be told',
    confidence: 'memory',
    caution: 'Proportions of this crab are recalled and not checked.',
  },
  {
    slug: 'cancer-pagurus',
    scientific: 'Cancer pagurus',
    common: 'brown crab',
    lengthPer: { 'greatest-width': spread(0.58, 0.62, 0.66) },
    depthPerWidth: spread(0.31, 0.34, 0.37),
    source: 'proportions recalled, not checked',
    confidence: 'memory',
    caution: 'Proportions of this crab are recalled and not checked.',
  },
]

/** The proportions kept for a species, by its slug as in a trip. */
export function speciesBySlug(slug: string): CrabSpecies | undefined {
  return crabSpecies.find((species) => species.slug === slug)
}

/** Notch width over tip width of swimming crabs, from 68/86 and 75/94 mm. */
export const notchToTip = 0.795
