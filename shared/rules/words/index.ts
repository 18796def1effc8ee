import type { QuantityName } from '@shared/schema/rule-quantities'
import { openingsWords } from './openings'
import { potWords } from './pot'
import type { QuantityWords } from './quantity-words'
import { releaseWords } from './release'
import { tackleWords } from './tackle'
import { tripWords } from './trip'

/** Words for every quantity that a rule may name. */
export const quantityWords: Record<QuantityName, QuantityWords> = {
  ...potWords,
  ...openingsWords,
  ...releaseWords,
  ...tackleWords,
  ...tripWords,
}
