import type { PartName } from '@shared/schema/check'

/** What the trade calls each part, to start a label. */
export const partWords: Record<PartName, string> = {
  body: 'Body',
  frame: 'Frame',
  'base-ring': 'Base ring',
  'middle-ring': 'Middle ring',
  'top-ring': 'Top ring',
  strut: 'Struts',
  'cross-bar': 'Cross bars',
  ballast: 'Ballast',
  netting: 'Netting',
  entrances: 'Entrances',
  doors: 'Door',
  chafe: 'Chafe wrap',
  bait: 'Bait',
  'escape-gaps': 'Escape gaps',
  release: 'Release cord',
  bridle: 'Bridle',
  rope: 'Rope',
  float: 'Float',
  marks: 'Marks',
  catch: 'Catch',
  trip: 'Trip',
  water: 'Water',
}
