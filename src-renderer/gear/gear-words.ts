import type { PotStatus } from '@shared/journal/locker-state'
import type { PartKind } from '@shared/schema/gear'
import type { baitStates, damageKinds, replaceReasons, storagePlaceNames } from '@shared/schema/journal'
import type { VerdictState } from '@shared/schema/check'
import type { ItemUnit } from '@shared/season/item'
import type { Decision } from '@shared/wear/judgement'
import { ropeGradeLooks, type RopeGrade } from '@shared/wear/rope'

/* Words for owned gear, shared by the three places that show it. */

export const partKindWords: Record<PartKind, string> = {
  rope: 'Rope',
  netting: 'Netting',
  'bait-bag': 'Bait bag',
  'bait-basket': 'Bait basket',
  chafe: 'Chafe wrap',
  'release-cord': 'Release cord',
  frame: 'Frame',
  float: 'Float',
  tag: 'Tag',
  ties: 'Ties',
  'door-hook': 'Door hook',
}

export const statusWords: Record<PotStatus, string> = {
  ashore: 'Ashore',
  'in-water': 'In the water',
  lost: 'Lost',
  retired: 'Retired',
}

export const decisionWords: Record<Decision, string> = { fine: 'Fine', watch: 'Watch', replace: 'Replace' }

/** The mark that goes with a decision; its word is the decision's own. */
export const decisionMarks: Record<Decision, VerdictState> = {
  fine: 'holds',
  watch: 'close',
  replace: 'fails',
}

export const storageWords: Record<(typeof storagePlaceNames)[number], string> = {
  sun: 'In the sun',
  shade: 'In the shade',
  indoors: 'Indoors',
}

export const damageWords: Record<(typeof damageKinds)[number], string> = {
  netting: 'Netting',
  rope: 'Rope',
  frame: 'Frame',
  entrance: 'Entrance',
  float: 'Float',
  'release-cord': 'Release cord',
  door: 'Door',
  'bait-holder': 'Bait holder',
}

export const baitWords: Record<(typeof baitStates)[number], string> = {
  none: 'None',
  some: 'Some',
  most: 'Most',
}

export const reasonWords: Record<(typeof replaceReasons)[number], string> = {
  planned: 'In time, still good',
  worn: 'Worn out',
  failed: 'It failed in use',
}

export const itemUnitWords: Record<ItemUnit, (count: number) => string> = {
  m: (count) => `${count} m`,
  panel: (count) => (count === 1 ? '1 panel' : `${count} panels`),
  piece: (count) => (count === 1 ? '1 piece' : `${count} pieces`),
}

export const gradeWords = (grade: RopeGrade) => `${grade}: ${ropeGradeLooks[grade].look}`
