import type { Coefficient } from './row'

const navfac = 'Between the steel and concrete rows of NAVFAC DM 7.02 (1986), Table 1, p. 7.2-63'

const friction = (label: string, low: number, mid: number, high: number, source = navfac): Coefficient => ({
  label,
  unit: '-',
  low,
  mid,
  high,
  cautious: 'low',
  range: [0.05, 1.5],
  standing: 'judgement',
  source,
})

/** Grip of the pot on each bottom, and how its edge stands there: the weakest inputs of the whole calculation. */
export const gripCoefficients = {
  frictionMud: friction('Grip on mud', 0.15, 0.3, 0.6),
  frictionSilt: friction('Grip on silt', 0.15, 0.3, 0.6),
  frictionSiltySand: friction('Grip on silty sand', 0.25, 0.35, 0.5),
  frictionSand: friction('Grip on sand', 0.3, 0.4, 0.7),
  frictionRippledSand: friction('Grip on rippled sand', 0.3, 0.4, 0.7, `Taken as sand. ${navfac}`),
  frictionGravel: friction('Grip on gravel', 0.35, 0.45, 0.8),
  frictionRock: friction(
    'Grip on rock',
    0.2,
    0.35,
    0.8,
    `${navfac}; snagging helps, smooth rock or weed hurts`,
  ),
  softEdgeArm: {
    label: 'Tipping arm left where the edge sinks into soft mud or silt',
    unit: '-',
    low: 0.85,
    mid: 0.9,
    high: 1,
    cautious: 'low',
    range: [0.5, 1],
    standing: 'judgement',
    source: 'Sinkage of the leading edge; 0.9 taken',
  },
} as const satisfies Record<string, Coefficient>
