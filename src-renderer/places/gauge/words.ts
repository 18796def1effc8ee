import type { CrabMeasure } from '@shared/fishing/species'
import type { GaugeVerdict } from '@shared/rules/gauge'
import type { MeasureMethod } from '@shared/schema/rule-species'

/** Words of the Gauge. */
export const methodWords: Record<MeasureMethod, string> = {
  'width-tip-to-tip': 'Width, from tip to tip of the side spines',
  'width-notch-to-notch': 'Width, from notch to notch ahead of the side spines',
  'width-points-out': 'Width, points left out: just ahead of the outermost points',
  'width-points-in': 'Width, points counted in',
  'width-widest': 'Width, at the widest part',
  'width-base-of-spines': 'Width, at the base of the side spines',
  'length-notch-to-rear': 'Length, from the notch between the front teeth to the rear edge',
  'length-front-to-rear': 'Length, from the front tip to the rear edge',
  'length-eye-to-rear': 'Length, from the eye socket to the rear edge',
  'length-without-spines': 'Length, front spines left out',
  'claw-length': 'Length of the claw, from its elbow to the tip of the finger that does not move',
  'tail-length': 'Length of the tail',
  'tail-width': 'Width of the tail across its second segment',
  'not-found': 'No way of measuring was found',
}

export const crabMeasureWords: Record<CrabMeasure, string> = {
  length: 'length of the shell',
  'tip-to-tip': 'width over the tips',
  'notch-to-notch': 'width between the notches',
  'inside-points': 'width inside the points',
  'greatest-width': 'greatest width',
}

export const answerWords: Record<GaugeVerdict['state'], string> = {
  keep: 'Keep',
  return: 'Return',
  'measure-again': 'Measure again',
  'cannot-tell': 'Cannot tell',
}

export const gaugeWords = {
  group: 'Gauge',
  region: 'Region',
  noRegion: 'Not chosen',
  zone: 'Zone',
  wholeRegion: 'Not chosen',
  date: 'Date',
  species: 'What is measured',
  none: 'No species here',
  noneText:
    'The rules of this region name no species to measure at this place and date. That does not mean that there are none.',
  choose: 'Choose a region',
  chooseText: 'A shell is measured a different way in each region, and a gauge for one is wrong in another.',
  drawing: 'Drawing of the measure',
  how: 'How to measure',
  limit: 'Limit',
  noLimit: 'No size limit was found. That does not mean there is none.',
  nothingKnown: 'No size, number or sex rule was found. That does not mean there is none.',
  several: 'More than one limit: they differ by sex, zone or date.',
  sexes: 'Male or female',
  male: 'Male',
  female: 'Female',
  kept: 'may be kept',
  notKept: 'goes back',
  notFound: 'no rule found',
  maleHow: 'The flap under the belly is narrow and pointed.',
  femaleHow: 'The flap under the belly is broad and round.',
  maleTail: 'The first pair of small legs under the tail is hard and points forward.',
  femaleTail: 'The first pair of small legs under the tail is thin and soft.',
  maleRock: 'The last pair of walking legs ends in a plain point; the flaps under the tail are single.',
  femaleRock: 'The last pair of walking legs ends in a small nipper; the flaps under the tail are in pairs.',
  eggs: 'With eggs',
  soft: 'Soft shell',
  softHow: 'Press the underside beside the claw: a soft shell gives.',
  bags: 'How many',
  whichGallon: 'which gallon is not said',
  measure: 'Measure one',
  measured: 'Measured',
  sex: 'Sex',
  unknown: 'Not looked at',
  carriesEggs: 'Carries eggs',
  softShell: 'Soft shell',
  typeOne: 'Type what the calliper says.',
  otherWays: 'Measured another way it would be about',
  estimate: 'An estimate from usual proportions. Never hold it against a limit.',
  nearly: (least: string, most: string, likely: string) => `${least} to ${most}, likely ${likely}`,
  print: 'Print at true size',
  rules: 'Read the rules',
  sure: { read: 'Read in a source', memory: 'Recalled, not read', conflicting: 'Sources disagree' },
  officialDecides: 'The official rules of the day decide. Measure with a calliper, not by eye.',
} as const

export const sheetWords = {
  check: (ruler: string) =>
    `First measure this ruler: it must be ${ruler} long. If it is not, print again at 100 % (“actual size”), or do not use this sheet.`,
  ruler: (length: string) => `Ruler of ${length}`,
  between: (limit: string) => `Between these two lines: ${limit}`,
  least: 'Least size',
  greatest: 'Greatest size',
  keep: 'Lay the animal on the lines. It must reach past both; within a millimetre, measure again.',
  keepMost: 'Lay the animal on the lines. It must not reach past both; within a millimetre, measure again.',
  paper: 'Paper stretches when it is wet. A calliper decides.',
  notThere: 'This species is not in the rules of that region any more.',
  tooLong: 'This limit is longer than the sheet. Use a calliper or a ruler.',
  noSize: 'There is no size limit to print for this species.',
  printedFrom: (day: string) => `Rules as held against their sources on ${day}.`,
} as const
