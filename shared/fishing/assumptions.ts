import type { Assumption } from '@shared/schema/assumption'

/* Adjustable figures of the fishing models. What no source measured says so. */

const common = 'Common practice; no measurement found'

const sheet = {
  baitHalfLifeH: row(
    8,
    3,
    24,
    'h',
    'assumed',
    'Half-life of exposed cut fish',
    'Within the 6-24 h in which attractants fell in lobster bait, Fishery Bulletin 117:211-219 (2019)',
  ),
  clipShield: row(1, 1, 1, 'share', 'assumed', 'Scent let out by a clip', 'Bait in the open'),
  meshBagShield: row(0.9, 0.6, 1, 'share', 'assumed', 'Scent let out by a mesh bag', common),
  wireBasketShield: row(0.7, 0.5, 0.9, 'share', 'assumed', 'Scent let out by a wire basket', common),
  jarShield: row(
    0.5,
    0.3,
    0.9,
    'share',
    'assumed',
    'Scent let out by a perforated jar',
    'Mass balance; no measured factor found',
  ),
  clipStrippedH: row(4, 2, 10, 'h', 'assumed', 'Time to strip bait on a clip', common),
  meshBagStrippedH: row(24, 10, 48, 'h', 'assumed', 'Time to strip bait in a mesh bag', common),
  wireBasketStrippedH: row(72, 36, 120, 'h', 'assumed', 'Time to strip bait in a wire basket', common),
  drawPerH: row(
    0.15,
    0.05,
    0.3,
    '1/h',
    'assumed',
    'First entry rate over a full pot',
    'Range worked through in the soak model; depends on how many crabs there are',
  ),
  funnelEscapePerDay: row(
    0.3,
    0.1,
    0.6,
    '1/day',
    'assumed',
    'Escape through open funnels',
    'Order of entrances from Vazquez Archdale and others 2007, Fish. Res. 85:202-209; number taken',
  ),
  oneWayEscapePerDay: row(
    0.1,
    0,
    0.3,
    '1/day',
    'assumed',
    'Escape past one-way doors or triggers',
    'Order of entrances from Vazquez Archdale and others 2007, Fish. Res. 85:202-209; number taken',
  ),
  slitEscapePerDay: row(
    0,
    0,
    0.05,
    '1/day',
    'read',
    'Escape through tight slits',
    'None in 7 days, Vazquez Archdale and others 2007, Fish. Res. 85:202-209 (abstract)',
  ),
  openGearSoakMin: row(
    20,
    15,
    30,
    'min',
    'read',
    'Soak of open gear',
    'Hill & Wassenberg 1999, Fish. Res. 41:37-46; Broadhurst and others 2016, Fish. Res. 179:115-123 (abstracts)',
  ),
  gapContact: row(
    0.9,
    0.55,
    0.95,
    'share',
    'derived',
    'Share of crabs that try a gap',
    'Least share that gaps let out in trials of mud crab and blue swimmer',
  ),
  selectionShare: row(
    0.08,
    0.03,
    0.12,
    'share',
    'derived',
    'Selection range over the size of which half stay',
    'Blue crab and rock lobster mesh trials',
  ),
  clawReachMm: row(100, 60, 150, 'mm', 'assumed', 'Reach of a crab through the netting', common),
  haulPointClearDeg: row(
    0,
    0,
    15,
    'deg',
    'assumed',
    'Clear wall between the haul point and an entrance',
    common,
  ),
  crabSpeedMps: row(
    0.065,
    0.03,
    0.1,
    'm/s',
    'derived',
    'Walking speed of a crab',
    'Worked back from Hill & Wassenberg 1999, Fish. Res. 41:37-46 (spanner crab)',
  ),
  spacingM: row(
    100,
    50,
    200,
    'm',
    'read',
    'Spacing at which pots do not compete',
    'Williams & Hill 1982, Mar. Biol. 71:187-192 (mud crab)',
  ),
} as const

function row(
  value: number,
  low: number,
  high: number,
  unit: string,
  standing: Assumption['standing'],
  label: string,
  source: string,
): Assumption {
  return { value, low, high, unit, standing, label, source }
}

type FishingAssumption = keyof typeof sheet
export type FishingAssumptions = Readonly<Record<FishingAssumption, Assumption>>
export const fishingAssumptions: FishingAssumptions = sheet
