import type { Finding, Spread } from '@shared/schema/check'
import type { Entrance, Pot } from '@shared/schema/pot'
import { shellOf, type CrabShell } from '../body'
import { entranceFit } from '../entrances'
import type { LegalSize } from '../legal-size'
import { speciesBySlug } from '../species'
import { formatQuantity } from '@shared/units/display'
import type { ReaderLocale } from '@shared/units/locale'

/** Whether a crab of the least legal size can walk in through every entrance. */
export function legalCrabFitsEntrance(pot: Pot, legal: LegalSize, locale: ReaderLocale): Finding {
  const species = speciesBySlug(legal.species)
  const common = {
    rule: `fishes:entrance-fit:${legal.species}`,
    part: 'entrances',
    standing: 'engineering',
  } as const
  const cannotTell = (missing: string): Finding => ({
    ...common,
    state: 'cannot-tell',
    what: `Cannot tell whether a legal crab fits the entrance without ${missing}.`,
    missing,
  })
  if (!pot.entrances) return cannotTell('the entrances')
  if (pot.entrances.length === 0)
    return {
      ...common,
      state: 'fails',
      what: 'The pot has no entrance.',
      actual: 0,
      limit: 1,
      unit: 'entrances',
    }
  const shell = species && shellOf(species, legal.measure, legal.sizeMm)
  if (!species || !shell)
    return cannotTell(`the body proportions of ${species?.common ?? legal.name ?? legal.species}`)
  const name = `${species.common} of ${formatQuantity(legal.sizeMm, 'mm', locale)}`
  const least = smallest(pot.entrances)
  const depth = shell.depthMm ?? depthBound(shell)
  const fitAt = (level: keyof Spread) =>
    entranceFit(least, { depthMm: depth[level], lengthMm: shell.lengthMm[level] })
  const worst = fitAt('high')
  const middle = fitAt('mid')
  // With only a bound on the depth, a crab that does not fit the bound may still fit.
  if (!shell.depthMm && worst === 'blocked' && least.widthMm >= shell.lengthMm.low)
    return cannotTell(`the depth of the shell of ${species.common}`)
  const tight = middle === 'tight' && shell.depthMm !== undefined
  const isNarrow = middle === 'blocked' && least.widthMm < shell.lengthMm.mid
  const needed = isNarrow ? shell.lengthMm.mid : tight ? 1.5 * depth.mid : depth.mid
  const clear = isNarrow ? least.widthMm : least.heightMm
  const state = middle === 'blocked' ? 'fails' : worst === 'blocked' || tight ? 'close' : 'holds'
  return {
    ...common,
    state,
    what: sentence(state, tight, name, species.caution),
    actual: clear,
    limit: needed,
    margin: clear - needed,
    unit: 'mm',
    source: { title: species.source, confidence: species.confidence },
  }
}

function sentence(
  state: Finding['state'],
  tight: boolean,
  name: string,
  caution: string | undefined,
): string {
  const said =
    state === 'holds'
      ? `A ${name} walks in.`
      : tight
        ? `A ${name} gets in, but the entrance is tight. Half again its depth is roomy.`
        : `A ${name} may not get in through the smallest entrance.`
  return caution ? `${said} ${caution}` : said
}

function smallest(entrances: readonly Entrance[]): { heightMm: number; widthMm: number } {
  return {
    heightMm: Math.min(...entrances.map((entrance) => entrance.heightMm)),
    widthMm: Math.min(...entrances.map((entrance) => entrance.widthMm)),
  }
}

/** A crab's shell is never deeper than it is long. */
function depthBound(shell: CrabShell): Spread {
  return shell.lengthMm
}
