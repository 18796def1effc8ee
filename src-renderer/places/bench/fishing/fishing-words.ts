import type { Bait } from '@shared/schema/pot'

/** Words of how a pot fishes. */
export const fishingWords = {
  relative: 'Shapes and shares only: nothing here says how many crabs there are.',
  noBait: 'Put in a bait holder to see how long it draws.',
  scent: 'Scent left in the water over the soak',
  scentShare: 'Share of the first scent',
  soak: 'Soak',
  yourSoak: 'Your soak',
  catch: 'Catch over the soak, against the best of this pot',
  catchShare: 'Share of its best',
  best: (low: string, mid: string, high: string) =>
    low === high ? `Nearly all of it after ${mid}.` : `Nearly all of it after ${mid} (${low} to ${high}).`,
  openGear: (low: string, high: string) =>
    `Gear that holds crabs only while it is pulled: lift it every ${low} to ${high}.`,
  gap: (gap: string, crab: string) => `What stays behind ${gap}: ${crab}`,
  kept: 'Share that stays',
  size: 'Size of the crab',
  legal: 'Legal from here',
  half: 'Half stay',
  noGaps: 'There are no gaps for undersized crabs to leave by.',
  noLegal: 'Choose a region and the crab you are after under Trip to see what the gaps keep.',
  noProportions: (crab: string) => `No figure was found for how ${crab} fits such a gap.`,
  manyCrabs: 'It speaks of many crabs, never of one, and not of soft ones.',
  neighbours: 'Next to another pot',
  spacing: 'Distance between pots',
  floatsApart: 'Clear water between the floats at the worst',
  floatsMeet: 'The floats can meet when the tide swings them towards each other.',
  swing: (offset: string) => `Each float stands ${offset} off its pot in the strongest current.`,
  reach: 'Draws crabs from down-current as far as',
  shared: 'Ground that both draw from',
  enough: (distance: string) => `Pots ${distance} apart were found not to compete.`,
  noSwing: 'How far the float swings needs the depth, the current and the rope.',
  lost: 'If it is lost',
  lostCord: (half: string, parted: string) =>
    `The release cord is at half strength after about ${half} days under water and parts by about ${parted}.`,
  lostShare: (low: string, high: string) =>
    `It then does ${low} to ${high} of the harm of a pot without a cord. A cord that parts does not always open the lid.`,
  lostNoCord: (days: string) =>
    `Nothing lets its catch go. In the one study found, such pots went on fishing for about ${days} days.`,
  lostSynthetic: 'The cord does not rot, so it does not let the catch go.',
  study: (source: string) => `From ${source}.`,
} as const

export const holderWords: Record<Bait['holder'], string> = {
  clip: 'Clip',
  'mesh-bag': 'Mesh bag',
  'wire-basket': 'Wire basket',
  jar: 'Jar',
}
