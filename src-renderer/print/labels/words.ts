import type { LabelPlace } from '@shared/rules/label-demands'

/** Words of the label sheet. */
export const labelWords = {
  places: {
    float: 'On the float',
    tag: 'Tag on the pot',
    ropeTag: 'Tag on the rope',
  } satisfies Record<LabelPlace, string>,
  about: (region: string) => `What ${region} asks for, for gear that is fished as the trip says.`,
  fill: 'What stands on your labels',
  fillHint: 'Kept on this machine, for these labels alone.',
  copies: 'Of each',
  written: 'As written on the design',
  height: (least: string) => `Letters at least ${least} high, as printed here at true size.`,
  noHeight:
    'No letter height was found for this region. Letters here are 10 mm high on floats, 5 mm on tags.',
  contrasting: 'The letters must stand out from their ground.',
  tooLarge:
    'Letters of this height do not fit across the sheet. Paint or stick them on by hand; the frame shows the height.',
  ruler: (size: string) =>
    `Check with a rule before cutting: this line is ${size} long. If it is not, print at 100 %.`,
  noRegion: 'Choose a region on the Bench first: every region asks for other marks.',
  nothing: (region: string) =>
    `No rule on marks that a program can read was found for ${region}. Ask the authority before fishing.`,
  rules: 'The rules these come from',
  mark: 'Waterproof it: a paper label does not last a season.',
  asked: (day: string) => `Rules as last checked on ${day}. The official rules of the day decide.`,
} as const
