import type { CrabMeasure } from '@shared/fishing/species'
import type { MeasureMethod } from '@shared/schema/rule-species'

/** How a rule's way of measuring is spoken of in the models; ways that no proportions are known for are left out. */
export const measureInModels: Partial<Record<MeasureMethod, CrabMeasure>> = {
  'width-tip-to-tip': 'tip-to-tip',
  'width-notch-to-notch': 'notch-to-notch',
  'width-points-out': 'inside-points',
  'width-points-in': 'tip-to-tip',
  'width-widest': 'greatest-width',
  'width-base-of-spines': 'notch-to-notch',
  'length-notch-to-rear': 'length',
  'length-front-to-rear': 'length',
}
