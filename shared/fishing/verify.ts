import { numberInput, type ModelRegistry } from '@shared/schema/vector'
import { baitMassIndex, baitReleased, baitStrength, decayRate, shieldedHalfLife } from './bait'
import { depthFromLength, lengthFromWidth, tipFromNotch } from './body'
import { impliedEntryRate, meetsEntrance } from './entrances'
import { expectedDeaths } from './ghost'
import {
  blueCrabMeshTrials,
  funnelEntrySuccess,
  gapTrials,
  mudCrabSpacing,
  mulletOverOtherFish,
} from './published-trials'
import { gapLength50, retention, retentionWithContact, ringWidth50, squareMeshWidth50 } from './selectivity'
import {
  fadingCatch,
  fadingPeakSoak,
  fillingCatch,
  soakToShare,
  steadyCatch,
  steadyPlateau,
  type SteadyEntry,
} from './soak-closed-form'
import { soakCurve, soakMarks, type SoakRates } from './soak-curve'
import { overlapShare, scentReach } from './spacing'

type Inputs = Record<string, unknown>
const n = numberInput

const steady = (i: Inputs): SteadyEntry => ({
  entryPerH: n(i, 'entry_rate_crabs_per_h'),
  saturation: n(i, 'saturation_number_crabs'),
  escapePerH: n(i, 'escape_rate_per_h'),
})
const firstEntry = (i: Inputs) => n(i, 'initial_entry_rate_crabs_per_h')
const saturation = (i: Inputs) => n(i, 'saturation_number_crabs')
const fade = (i: Inputs) => decayRate(n(i, 'bait_half_life_h'))
const rates = (i: Inputs): SoakRates => ({
  drawPerH: firstEntry(i) / saturation(i),
  decayPerH: fade(i),
  escapePerH: n(i, 'escape_rate_per_h'),
})

/** Reads one row of a table of published results, or refuses inputs that no trial had. */
function published<T>(rows: readonly T[], fits: (row: T) => boolean, what: string): T {
  const row = rows.find(fits)
  if (!row) throw new RangeError(`no published ${what} for these inputs`)
  return row
}

const gapTrial = (i: Inputs) =>
  published(
    gapTrials,
    (row) =>
      row.gapHeightMm === i['gap_height_mm'] &&
      row.gapWidthMm === i['gap_width_mm'] &&
      row.gaps === i['gaps_count'],
    'gap trial',
  ).value

/** The fishing models by the key of their published values. */
export const fishingModels: ModelRegistry = {
  'soak.catch-index-constant-entry-with-saturation': (i) => steadyCatch(steady(i), n(i, 'soak_h')),
  'soak.plateau-constant-entry': (i) => steadyPlateau(steady(i)),
  'soak.time-to-90-percent-of-plateau': (i) => soakToShare(steady(i), 0.9),
  'soak.bait-decay-rate-from-half-life': (i) => decayRate(n(i, 'half_life_h')),
  'soak.catch-index-decaying-bait-no-saturation': (i) =>
    fadingCatch(firstEntry(i), fade(i), n(i, 'escape_rate_per_h'), n(i, 'soak_h')),
  'soak.soak-of-peak-catch-no-saturation': (i) => fadingPeakSoak(fade(i), n(i, 'escape_rate_per_h')),
  'soak.catch-index-decaying-bait-and-saturation-no-escape': (i) =>
    fillingCatch(firstEntry(i), saturation(i), fade(i), n(i, 'soak_h')),
  'soak.catch-index-full-model-numeric': (i) =>
    (soakCurve(rates(i), n(i, 'soak_h')).share.at(-1) ?? 0) * saturation(i),
  'soak.soak-of-peak-catch-full-model': (i) => soakMarks(soakCurve(rates(i), 96)).peakH,
  'entrance.entry-success-per-attempt-male-funnel': (i) =>
    published([funnelEntrySuccess.male], () => i['sex'] === 'male', 'entry success'),
  'entrance.entry-rate-implied-box-slit-pot': (i) =>
    impliedEntryRate(n(i, 'fraction_entered'), n(i, 'duration_h')),
  'entrance.entry-probability-ratio-low-wide-triggered-vs-standard': (i) =>
    n(i, 'p_new') / n(i, 'p_standard'),
  'entrance.fraction-of-arrivals-meeting-an-entrance': (i) =>
    meetsEntrance(
      n(i, 'entrances_count'),
      n(i, 'entrance_width_fraction_of_perimeter'),
      n(i, 'search_arc_fraction'),
    ),
  'selectivity.retention-probability': (i) => retention(n(i, 'crab_cw_mm'), n(i, 'L50_cw_mm'), n(i, 'SR_mm')),
  'selectivity.L50-cw': (i) =>
    published(
      blueCrabMeshTrials,
      (row) => row.trial === i['trial'] && row.barMm === i['square_mesh_bar_mm'],
      'mesh trial',
    ).width50Mm,
  'selectivity.L50-cw-from-bar-regression-field': (i) => squareMeshWidth50(n(i, 'square_mesh_bar_mm')),
  'selectivity.CL50-from-gap-height': (i) =>
    gapLength50(n(i, 'gap_height_mm'), n(i, 'depth_to_length_ratio')),
  'selectivity.depth-to-length-ratio': (i) => n(i, 'carapace_height_mm') / n(i, 'carapace_length_mm'),
  'selectivity.reduction-of-undersize-mud-crab-paired-gaps-46x120': gapTrial,
  'selectivity.reduction-of-undersize-blue-swimmer-three-gaps-36x120': gapTrial,
  'selectivity.retention-with-contact-probability': (i) =>
    retentionWithContact(n(i, 'logistic_retention'), n(i, 'contact_probability')),
  'selectivity.circular-ring-cw50-blue-crab-male': (i) =>
    ringWidth50(n(i, 'ring_inner_diameter_mm'), n(i, 'clearance_factor'), n(i, 'length_to_width_ratio')),
  'selectivity.ring-cw50-over-diameter-upper-bound-dungeness': (i) =>
    n(i, 'legal_cw_mm') / n(i, 'ring_inner_diameter_mm'),
  'allometry.carapace-length-from-width': (i) =>
    lengthFromWidth(n(i, 'cw_mm'), n(i, 'length_to_width_ratio')),
  'allometry.body-depth-from-width': (i) =>
    depthFromLength(
      lengthFromWidth(n(i, 'cw_mm'), n(i, 'length_to_width_ratio')),
      n(i, 'depth_to_length_ratio'),
    ),
  'allometry.tip-width-from-notch-width': (i) =>
    tipFromNotch(n(i, 'notch_cw_mm'), n(i, 'notch_to_tip_ratio')),
  'bait.relative-release-intensity': (i) => baitStrength(decayRate(n(i, 'half_life_h')), n(i, 'soak_h')),
  'bait.shielded-half-life-mass-balance': (i) =>
    shieldedHalfLife(n(i, 'exposed_half_life_h'), n(i, 'shield_factor')),
  'bait.total-attractant-fraction-released': (i) =>
    baitReleased(decayRate(n(i, 'half_life_h')), n(i, 'soak_h')),
  'bait.catch-index-vs-bait-weight': (i) => baitMassIndex(n(i, 'bait_kg'), n(i, 'half_saturation_kg')),
  'bait.mullet-catch-ratio-over-other-fish': (i) =>
    published([mulletOverOtherFish], () => i['bait'] === 'sea mullet', 'bait trial').value,
  'spacing.attraction-reach': (i) =>
    scentReach(n(i, 'current_m_per_s'), n(i, 'crab_speed_m_per_s'), n(i, 'time_min') * 60),
  'spacing.overlap-fraction-of-two-equal-circles': (i) => overlapShare(n(i, 'radius_m'), n(i, 'spacing_m')),
  'spacing.minimum-non-competing-spacing-mud-crab': (i) =>
    published([mudCrabSpacing], () => i['species'] === 'Scylla serrata', 'spacing trial').value,
  'ghost-fishing.expected-deaths-before-release-with-cord': (i) =>
    expectedDeaths(n(i, 'mortality_crabs_per_trap_day'), n(i, 'release_day')),
  'ghost-fishing.expected-deaths-without-cord': (i) =>
    expectedDeaths(n(i, 'mortality_crabs_per_trap_day'), n(i, 'duration_years') * 365.25),
}
