import type { PartKind } from '@shared/schema/gear'
import { ageLife } from './age-life'
import { cordLife } from './cord-life'
import { frameLife } from './frame-life'
import type { LifeContext, PartLife } from './judgement'
import { isMetal } from './materials'
import type { PartUse } from './part-use'
import { gradeFound, strengthLife } from './strength-life'

/**
 * How a part stands: fine, to be watched or to be replaced, with the reason and the life that remains.
 *
 * @param part    kind, material, what it went through and what inspections found
 * @param context figures and what else it depends on
 * @returns the judgement, with median and 80 % range
 */
export function partLife(part: PartUse, context: LifeContext): PartLife {
  const life = shorterOf(lifeOfKind(part, context), lifeByOwnRecord(part, context))
  const last = part.inspections.at(-1)
  // However little is asked of a part: what looked nearly done is looked at again.
  return life.decision === 'fine' && last && gradeFound(last) === 3
    ? { ...life, decision: 'watch', reason: `Badly worn when last looked at. ${life.reason}` }
    : life
}

const weight = { fine: 0, watch: 1, replace: 2 } as const

/** What the user's own failures say of parts that are otherwise judged by their strength or their days in water. */
function lifeByOwnRecord(part: PartUse, context: LifeContext): PartLife | undefined {
  return (context.ownFailures ?? 0) > 0 && judgedOtherwise.has(part.kind) ? ageLife(part, context) : undefined
}

const judgedOtherwise: ReadonlySet<PartKind> = new Set(['rope', 'netting', 'release-cord'])

/** The first judgement, unless the second asks for more. */
function shorterOf(life: PartLife, own: PartLife | undefined): PartLife {
  return own && weight[own.decision] > weight[life.decision] ? { ...life, ...own } : life
}

function lifeOfKind(part: PartUse, context: LifeContext): PartLife {
  switch (part.kind) {
    case 'rope':
    case 'netting':
      return isMetal(part.material) ? frameLife(part, context) : strengthLife(part, context)
    case 'release-cord':
      return cordLife(part, context)
    case 'frame':
    case 'bait-basket':
      return frameLife(part, context)
    default:
      return ageLife(part, context)
  }
}
