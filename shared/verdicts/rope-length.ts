import type { Outlook } from '@shared/physics/coefficients'
import type { Finding } from '@shared/schema/check'
import { sources, stateOver } from './judging'
import { forEachOutlook, type Prepared } from './prepared'
import type { SolvedLine } from './solved-line'

/** Whether the rope is long enough, for the depth at high water and for the float to stay up in the current. */
export function ropeLength({ input, words }: Prepared, solved: Record<Outlook, SolvedLine>): Finding {
  const length = input.pot.rope?.lengthM ?? 0
  // Where no rope keeps the float up its length is not at fault: then the depth alone asks.
  const needed = (outlook: Outlook) => {
    const { byDepthM, minimumRopeM } = solved[outlook]
    return Number.isFinite(minimumRopeM) ? minimumRopeM : byDepthM
  }
  const state = stateOver(forEachOutlook((outlook) => length >= needed(outlook)))
  const wanted = needed('middle')
  const has = `The rope is ${words.with(length, 'm')}`
  const sentence = {
    fails:
      length < solved.middle.byDepthM
        ? `${has}; at high water the depth here asks for ${words.atLeast(wanted, 'm')} at least.`
        : `${has}: enough for the depth, but in this current it takes ${words.atLeast(wanted, 'm')} to keep the float up.`,
    close: `${has}; ${words.atLeast(wanted, 'm')} is the least for this depth and current, ${words.atLeast(needed('cautious'), 'm')} by cautious figures.`,
    holds: `${has}; ${words.atLeast(wanted, 'm')} is the least for this depth and current.`,
  }
  return {
    rule: 'float:rope-length',
    state,
    part: 'rope',
    what: sentence[state],
    actual: length,
    limit: wanted,
    margin: length - wanted,
    unit: 'm',
    standing: 'engineering',
    source: sources.length,
  }
}
