import type { OpeningRow } from '@shared/design/drawing/opening-schedule'
import type { ViewName } from '@shared/design/drawing/view-plane'

/** Words of the build sheet. */
export const buildWords = {
  drawing: 'Drawing',
  scale: (n: number) => `Scale 1 : ${n}. Broken lines lie behind. The netting is left out.`,
  views: { front: 'From the front', side: 'From the side', above: 'From above' } satisfies Record<
    ViewName,
    string
  >,
  viewAlt: {
    front: 'The pot from the front',
    side: 'The pot from the side, its front to the right',
    above: 'The pot from above, its front to the right',
  } satisfies Record<ViewName, string>,
  openings: 'Openings',
  letter: 'Letter',
  opening: 'Opening',
  size: 'Width, height',
  lower: 'Above base',
  bearing: 'Bearing',
  bearingNote:
    'Height of the lower edge above the base. Bearings run clockwise from the front, seen from above.',
  places: { wall: '', top: 'in the top', base: 'in the base' } satisfies Record<OpeningRow['face'], string>,
  names: {
    entrances: 'Entrance',
    'escape-gaps': 'Escape gap',
    release: 'Release opening',
    doors: 'Door',
  } satisfies Record<OpeningRow['part'], string>,
  across: (size: string) => `${size} across`,
  by: (width: string, height: string) => `${width} × ${height}`,
  netting: 'Netting panels',
  mesh: (bar: string, twine: string) => `Mesh ${bar} knot to knot, twine ${twine}. Sizes as hung.`,
  meshes: (long: number, deep: number) => `${long} meshes along, ${deep} down`,
  noNetting: 'The design gives no netting.',
  done: 'Done',
  assembly: 'Hanging and tackle',
  totals: (dry: string) => `All parts together ${dry} dry, without bait and catch.`,
  bridle: (legs: number, bearing: number) =>
    `Bridle of ${legs} ${legs === 1 ? 'leg' : 'legs'}; the rope is tied at bearing ${bearing}°.`,
  bridleClear:
    'Tie the rope between two entrances, never opposite one: an entrance below it lets crabs out on the haul.',
  folded: (size: string) => `Folds to ${size}.`,
  rope: (rope: string) => `Rope: ${rope}.`,
  caution: 'Round off cut ends and bar joints. Local rules and licensed practice decide.',
} as const
