/* Results read in published trials. They are shown as facts with their source and never scaled to another pot. */

export interface Trial {
  readonly what: string
  readonly value: number
  readonly unit: string
  readonly source: string
}

/** Half of blue crabs stay at this width over the tips [mm], by square mesh bar and kind of trial. */
export const blueCrabMeshTrials: readonly {
  readonly trial: 'field trap' | 'laboratory barrier'
  readonly barMm: number
  readonly width50Mm: number
  readonly rangeMm?: number
}[] = [
  { trial: 'field trap', barMm: 30, width50Mm: 84.7, rangeMm: 8.5 },
  { trial: 'field trap', barMm: 35, width50Mm: 93.1, rangeMm: 3.9 },
  { trial: 'field trap', barMm: 40, width50Mm: 104.0, rangeMm: 3.1 },
  { trial: 'field trap', barMm: 45, width50Mm: 117.2, rangeMm: 11.7 },
  { trial: 'field trap', barMm: 50, width50Mm: 131.7, rangeMm: 8.9 },
  { trial: 'laboratory barrier', barMm: 35, width50Mm: 80.9 },
  { trial: 'laboratory barrier', barMm: 40, width50Mm: 93.2 },
  { trial: 'laboratory barrier', barMm: 45, width50Mm: 105.6 },
]

/** Entry success of a crab that tries a funnel of a cylinder pot with two, by sex. */
export const funnelEntrySuccess = {
  male: 0.3,
  female: 0.25,
  source: 'Behavior of the commercial sand crab at trap entrances, Asian Fish. Sci. 3 (abstract)',
} as const

export const gapTrials: readonly (Trial & {
  readonly gapHeightMm: number
  readonly gapWidthMm: number
  readonly gaps: number
})[] = [
  {
    what: 'undersized mud crabs let out, paired low gaps',
    gapHeightMm: 46,
    gapWidthMm: 120,
    gaps: 2,
    value: 95,
    unit: '%',
    source: 'Broadhurst, Butcher & Cullis 2014, PLOS ONE 10.1371/journal.pone.0106414 (abstract)',
  },
  {
    what: 'undersized blue swimmer crabs let out, three gaps in 56 mm mesh',
    gapHeightMm: 36,
    gapWidthMm: 120,
    gaps: 3,
    value: 54,
    unit: '%',
    source: 'Broadhurst and others 2019, Fish. Manag. Ecol. 26:319-326 (abstract)',
  },
]

export const mudCrabSpacing: Trial = {
  what: 'least spacing at which mud crab pots did not compete',
  value: 100,
  unit: 'm',
  source:
    'Williams & Hill 1982, Mar. Biol. 71:187-192 (abstract): 50 m competed, 100 and 200 m did not differ',
}

export const mulletOverOtherFish: Trial = {
  what: 'blue swimmer catch with sea mullet over two cheaper fish, at least',
  value: 1.5,
  unit: 'ratio',
  source: 'Fisheries Research 2020, 10.1016/j.fishres.2020.105518 (abstract); the gain was all females',
}
