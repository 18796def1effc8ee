import type { QuantityName } from '@shared/schema/rule-quantities'
import type { Reader } from '../facts'
import { bodyReaders } from './body'
import { floatReaders } from './float'
import { gapReaders } from './gaps'
import { marksReaders } from './marks'
import { meshReaders } from './mesh'
import { openingReaders } from './openings'
import { releaseReaders } from './release'
import { ropeReaders } from './rope'
import { tripReaders } from './trip'

/** How each quantity is read, in the base unit of its kind. */
export const quantityReaders: Record<QuantityName, Reader> = {
  ...bodyReaders,
  ...meshReaders,
  ...openingReaders,
  ...gapReaders,
  ...releaseReaders,
  ...ropeReaders,
  ...floatReaders,
  ...marksReaders,
  ...tripReaders,
}
