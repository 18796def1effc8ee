import { numberInput, type ModelRegistry } from '@shared/schema/vector'
import { halvings, strengthAfter, sunlitStrength } from './damage'
import { dragMultiplier, hydroidLengthMm, weeksToMultiplier, type Wetted } from './fouling'
import { barsThatLetOut, crabGirth, hoopNetBreaks } from './mesh-damage'
import { airLossUm, anodeMassKg, perMonth, yearsToSection, zincFirstYearUpper, zincLifeYears } from './metal'
import { learn, predictedSurvival, priorBelief } from './own-record'
import { daysToPart, rotHalfLife, rotRate, rotRateAt } from './release-cord'
import { bestReplacementAge, costRate, type ReplacementCosts } from './replacement-age'
import { massLeft, requiredShare, retireDiameterLossPct, sectionLeft } from './rope'
import { probabilityBelow, remainingMonths, updateStrength } from './strength-belief'
import { survival, survivalFrom, type Weibull } from './weibull'

type Inputs = Record<string, unknown>
const n = numberInput

const sunlit = (i: Inputs) =>
  sunlitStrength((n(i, 'annual_dose_kLy') * n(i, 'months_in_sun')) / 12, n(i, 'half_dose_kLy'))
const life = (i: Inputs): Weibull => ({
  shape: n(i, 'shape'),
  scale: n(i, 'scale_h' in i ? 'scale_h' : 'scale_months'),
})
const costs = (i: Inputs): ReplacementCosts => ({
  planned: n(i, 'cost_preventive'),
  failure: n(i, 'cost_failure'),
})
const wetted = (reynolds: number): Wetted => (reynolds >= 4000 ? 'wire' : 'thin-twine')

function ages(i: Inputs, key: string): number[] {
  const list = i[key]
  if (!Array.isArray(list) || !list.every((age) => typeof age === 'number'))
    throw new RangeError(`${key} must be a list of numbers`)
  return list
}

/** Refuses inputs that the published result was not for. */
function onlyFor<T>(fits: boolean, value: T, what: string): T {
  if (!fits) throw new RangeError(`no published ${what} for these inputs`)
  return value
}

/** The wear models by the key of their published values. */
export const wearModels: ModelRegistry = {
  'mesh-damage.crab-girth-ellipse': (i) => crabGirth(n(i, 'carapace_length_mm'), n(i, 'body_depth_mm')),
  'mesh-damage.contiguous-broken-bars-that-let-crab-out': (i) =>
    barsThatLetOut(n(i, 'girth_mm'), n(i, 'bar_length_mm')),
  'netting.mesh-breaks-per-set-thin-twine': (i) =>
    onlyFor(i['twine_mm'] === hoopNetBreaks.twineMm, hoopNetBreaks.perSet, 'breaks a set'),
  'rot-cord.strength-decay-rate-cotton-96-thread': (i) =>
    rotRate(n(i, 'strength_loss_fraction'), n(i, 'days')),
  'rot-cord.strength-half-life-cotton-96-thread-cold': (i) => rotHalfLife(n(i, 'rate_per_day')),
  'rot-cord.days-to-part-under-load': (i) =>
    daysToPart(n(i, 'initial_strength_N'), n(i, 'load_N'), n(i, 'rate_per_day')),
  'rot-cord.temperature-scaled-rate': (i) =>
    rotRateAt(n(i, 'rate_ref_per_day'), n(i, 'ref_temp_C'), n(i, 'temp_C'), n(i, 'Q10')),
  'uv.retained-strength': sunlit,
  'uv.retained-strength-at-rating': sunlit,
  'submerged-ageing.mass-retained-nylon-rope': (i) =>
    100 * massLeft(n(i, 'mass_loss_percent_per_month') / 100, n(i, 'months')),
  'rope.area-remaining-after-diameter-loss': (i) => 100 * sectionLeft(n(i, 'diameter_loss_percent') / 100),
  'rope.retire-fibre-rope-diameter-loss-limit': (i) =>
    onlyFor(i['diameter_loss_kind'] === 'external abrasion', retireDiameterLossPct, 'limit'),
  'rope.required-residual-fraction': (i) =>
    requiredShare(n(i, 'peak_load_N'), n(i, 'design_factor'), n(i, 'knot_factor'), n(i, 'new_break_load_N')),
  'rope.damage-sum-retained-strength': (i) =>
    strengthAfter(
      halvings({
        doseKly: n(i, 'uv_dose_kLy'),
        halfDoseKly: n(i, 'uv_half_dose_kLy'),
        hauls: n(i, 'hauls'),
        halfHauls: n(i, 'haul_half_life'),
        immersedDays: n(i, 'immersed_days'),
        halfImmersedDays: n(i, 'immersion_half_life_days'),
      }),
    ),
  'corrosion.zinc-life-immersed': (i) =>
    zincLifeYears(n(i, 'zinc_um'), n(i, 'rate_um_per_year'), 0, n(i, 'wet_fraction')),
  'corrosion.zinc-life-mixed-duty': (i) =>
    zincLifeYears(
      n(i, 'zinc_um'),
      n(i, 'rate_sea_um_per_year'),
      n(i, 'rate_air_um_per_year'),
      n(i, 'wet_fraction'),
    ),
  'corrosion.zinc-loss-iso9224-power-law': (i) =>
    airLossUm(n(i, 'first_year_um'), n(i, 'years'), n(i, 'exponent')),
  'corrosion.years-to-70-percent-section-round-bar': (i) =>
    yearsToSection(n(i, 'diameter_mm'), n(i, 'rate_mm_per_year_per_surface'), 0.7),
  'corrosion.zinc-first-year-upper-C5': (i) =>
    onlyFor(i['category'] === 'C5', zincFirstYearUpper.C5, 'class of air'),
  'corrosion.anode-mass': (i) =>
    anodeMassKg({
      areaM2: n(i, 'bare_area_m2'),
      currentDensity: n(i, 'current_density_A_per_m2'),
      breakdown: n(i, 'coating_breakdown'),
      hours: n(i, 'hours_immersed'),
      capacityAhPerKg: n(i, 'capacity_Ah_per_kg'),
      utilisation: n(i, 'utilisation'),
    }),
  'fouling.hydroid-length': (i) => hydroidLengthMm(n(i, 'weeks_immersed')),
  'fouling.drag-multiplier-Re4000': (i) => dragMultiplier(n(i, 'hydroid_length_mm'), 'wire'),
  'fouling.weeks-to-drag-multiplier-1-5': (i) => weeksToMultiplier(1.5, wetted(n(i, 'Re'))),
  'fouling.mean-growth-untreated-white-net': (i) => perMonth(n(i, 'mass_kg_per_m2'), n(i, 'days')),
  'reliability.weibull-reliability': (i) => survival(life(i), n(i, 'age_months')),
  'reliability.conditional-survival-next-6-months': (i) =>
    survivalFrom(life(i), n(i, 'age_months'), n(i, 'horizon_months')),
  'reliability.optimal-replacement-age': (i) => bestReplacementAge(life(i), costs(i)) ?? Infinity,
  'reliability.cost-rate-at-optimum': (i) => costRate(life(i), costs(i), n(i, 'age_months')),
  'reliability.bayes-log-strength-posterior-median': (i) =>
    updateStrength(
      { median: n(i, 'predicted_median_fraction'), logSd: n(i, 'predicted_log_sd') },
      { median: n(i, 'inspected_median_fraction'), logSd: n(i, 'inspected_log_sd') },
    ).median,
  'reliability.bayes-log-strength-posterior-log-sd': (i) =>
    updateStrength(
      { median: 1, logSd: n(i, 'predicted_log_sd') },
      { median: 1, logSd: n(i, 'inspected_log_sd') },
    ).logSd,
  'reliability.remaining-months-to-50-percent-median': (i) =>
    remainingMonths(
      { median: n(i, 'posterior_median_fraction'), logSd: 1 },
      n(i, 'floor_fraction'),
      n(i, 'damage_per_month_halvings'),
    ).mid,
  'reliability.gamma-weibull-predictive-survival': (i) =>
    predictedSurvival(
      learn(priorBelief(n(i, 'shape'), n(i, 'prior_scale_months'), n(i, 'prior_failures')), {
        failed: ages(i, 'failure_ages_months'),
        survived: ages(i, 'survivor_ages_months'),
      }),
      n(i, 'age_months'),
    ),
  'reliability.probability-strength-below-floor': (i) =>
    probabilityBelow(
      { median: n(i, 'posterior_median_fraction'), logSd: n(i, 'posterior_log_sd') },
      n(i, 'floor_fraction'),
    ),
}
