import type { Assumption, AssumptionStanding } from '@shared/schema/assumption'

/*
 * Every adjustable figure of the wear models in one sheet, with its spread, unit, source and standing. "Assumed"
 * means that no measurement was found; the user's own record and inspections correct it.
 */

const ratingScale = 'Rope makers rate ropes by the dose that halves them; the number is taken'
const order = 'Only the order of materials is known; the number is taken'
const none = 'No published figure was found'
const trade = 'Trade pages, wide spread'

const sheet = {
  uvPp: row(150, 80, 300, 'kLy', 'assumed', 'Sun that halves stabilised PP', ratingScale),
  uvPe: row(250, 150, 500, 'kLy', 'assumed', 'Sun that halves pigmented PE', order),
  uvBlack: row(500, 300, 1000, 'kLy', 'assumed', 'Sun that halves PE or PP with carbon black', order),
  uvPa: row(150, 80, 300, 'kLy', 'assumed', 'Sun that halves nylon', order),
  uvPes: row(600, 300, 1200, 'kLy', 'assumed', 'Sun that halves polyester', order),
  sunKlyPerYear: row(
    100,
    60,
    200,
    'kLy/year',
    'memory',
    'Sun in a year at the place',
    '100 in Central Europe, rope maker’s note; other places recalled',
  ),
  sunShareUnknown: row(
    0.25,
    0.05,
    0.6,
    'share',
    'assumed',
    'Time in the sun ashore where storage is not stated',
    none,
  ),
  sunShareSun: row(0.5, 0.4, 1, 'share', 'assumed', 'Dose reaching gear stacked in the open', none),
  sunShareShade: row(0.1, 0, 0.2, 'share', 'assumed', 'Dose reaching gear kept in shade', none),
  halfHauls: row(400, 150, 1000, 'hauls', 'assumed', 'Hauls that halve a rope over a bare rail', none),
  halfImmersedPp: row(
    1800,
    900,
    3600,
    'days',
    'assumed',
    'Days in the water that halve PP',
    'Mass loss from Welden & Cowie 2017, Mar. Pollut. Bull. 118:248-253; strength taken to fall three times as fast',
  ),
  halfImmersedPe: row(1560, 780, 3100, 'days', 'assumed', 'Days in the water that halve PE', 'As for PP'),
  halfImmersedPa: row(690, 345, 1400, 'days', 'assumed', 'Days in the water that halve nylon', 'As for PP'),
  strengthLogSd: row(0.4, 0.3, 0.6, 'ln', 'assumed', 'Spread of the wear prediction', none),
  designFactor: row(
    5,
    5,
    12,
    '',
    'read',
    'Design factor of a rope',
    'CI 1401-06 as reprinted by a rope seller',
  ),
  knotFactor: row(
    0.5,
    0.5,
    0.8,
    'share',
    'read',
    'Strength that knots leave',
    'CI 1401-06 as reprinted by a rope seller: up to half is lost',
  ),
  replaceChance: row(0.3, 0.2, 0.5, 'share', 'assumed', 'Chance of being too weak at which to replace', none),
  watchChance: row(0.1, 0.05, 0.2, 'share', 'assumed', 'Chance of being too weak at which to watch', none),
  rotPerDay: row(
    0.008,
    0.004,
    0.016,
    '1/day',
    'derived',
    'Rot of a cotton cord in cold water',
    'Winger and others 2015, Fish. Res. 161:21-23: 63 % in 124 days',
  ),
  rotReferenceC: row(1, -1, 4, '°C', 'assumed', 'Temperature of that trial', none),
  rotQ10: row(2, 1.5, 3, '', 'assumed', 'Rise of rot over 10 °C', none),
  waterC: row(10, 4, 25, '°C', 'assumed', 'Water temperature where none is stated', 'Set it for the place'),
  zincSeaUm: row(
    20,
    15,
    25,
    'µm/year',
    'read',
    'Zinc lost in sea water',
    'Galvanizers’ association basics sheet 2012, p. 22',
  ),
  zincAirUm: row(
    6,
    4.2,
    8.4,
    'µm/year',
    'read',
    'Zinc lost in sea air',
    'ISO 9223 class C5 as reprinted in an offshore-structures textbook, Table 6.7',
  ),
  zincCoatUm: row(45, 30, 85, 'µm', 'assumed', 'Zinc coat where none is stated', none),
  steelMmPerYear: row(
    0.1,
    0.035,
    0.25,
    'mm/year',
    'memory',
    'Steel lost from a surface in pot duty',
    'Low end from cold-regions report LR-03-19; high end recalled',
  ),
  steelSectionKept: row(0.7, 0.6, 0.8, 'share', 'assumed', 'Section a frame bar must keep', none),
  lifeShape: row(3, 2, 4, '', 'assumed', 'Shape of the spread of lives', none),
  priorFailures: row(
    2,
    1,
    5,
    'failures',
    'assumed',
    'Failures that the usual life counts for beside your own record',
    none,
  ),
  ropeLife: row(36, 24, 54, 'months', 'assumed', 'Usual life of a rope', none),
  nettingLife: row(48, 24, 84, 'months', 'assumed', 'Usual life of netting', none),
  baitBagLife: row(60, 20, 150, 'fills', 'assumed', 'Fills of a bait bag', none),
  chafeLife: row(24, 12, 48, 'months', 'assumed', 'Usual life of a chafe wrap', none),
  tiesLife: row(12, 1, 36, 'months', 'memory', 'Usual life of plain ties in the sun', trade),
  tiesBlackLife: row(36, 12, 60, 'months', 'assumed', 'Usual life of black ties', trade),
  floatLife: row(66, 36, 96, 'months', 'assumed', 'Usual life of a PVC or EVA float', none),
  floatEpsLife: row(48, 24, 72, 'months', 'assumed', 'Usual life of a foam float', none),
  tagLife: row(60, 24, 120, 'months', 'assumed', 'Usual life of a tag', none),
  doorHookLife: row(
    12,
    8,
    18,
    'months',
    'read',
    'Life of a rubber or natural-fibre door hook',
    'Kent and Essex potting page: material that needs renewing each year',
  ),
  cordLife: row(6, 3, 12, 'months', 'assumed', 'Usual life of a release cord', 'Renewed each season'),
} as const

function row(
  value: number,
  low: number,
  high: number,
  unit: string,
  standing: AssumptionStanding,
  label: string,
  source: string,
): Assumption {
  return { value, low, high, unit, standing, label, source }
}

type WearAssumption = keyof typeof sheet
export type WearAssumptions = Readonly<Record<WearAssumption, Assumption>>
export const wearAssumptions: WearAssumptions = sheet

/** Sun in a year at some latitudes [kLy], for picking the nearest; recalled but for Central Europe. */
const sunByLatitude: readonly {
  readonly latitudeDeg: number
  readonly kly: number
  readonly place: string
}[] = [
  { latitudeDeg: 15, kly: 180, place: 'northern Australia' },
  { latitudeDeg: 27, kly: 150, place: 'Florida' },
  { latitudeDeg: 47.5, kly: 80, place: 'Puget Sound' },
  { latitudeDeg: 50, kly: 100, place: 'Central Europe' },
  { latitudeDeg: 59, kly: 70, place: 'Norway and Scotland' },
]

/** Sun in a year at the listed latitude nearest to a place's [kLy/year]. */
export function sunAt(latitudeDeg: number): number {
  const away = (row: { latitudeDeg: number }) => Math.abs(row.latitudeDeg - Math.abs(latitudeDeg))
  return sunByLatitude.reduce((a, b) => (away(b) < away(a) ? b : a)).kly
}
