import { comparePacks } from '@shared/rules/compare'
import { coverage, isOlderThanAYear } from '@shared/rules/coverage'
import type { Rule, RulePack } from '@shared/schema/rule-pack'

/* Rule packs as text for a terminal. */

const caution = 'The official rules of the day decide.'

/** One line a region: how many rules, and how old. */
export function listText(packs: readonly RulePack[], today: string): string {
  const lines = packs.map((pack) => {
    const { checked, shown, unknown } = coverage(pack)
    const counts = `${checked.length} checked, ${shown.length} to read, ${unknown.length} not found`
    return `${pack.region.padEnd(8)}${pack.name.padEnd(28)}${counts}; ${age(pack, today)}`
  })
  return `${lines.join('\n')}\n${caution}\n`
}

/** Every rule of one region with its sources. */
export function packText(pack: RulePack, today: string): string {
  return [
    `${pack.name} (${pack.region}), ${pack.authority}; ${age(pack, today)}`,
    '',
    ...pack.rules.map((rule) => `${rule.id}\n  ${rule.says}${manner(rule)}\n  ${sourcesOf(pack, rule)}`),
    ...pack.notFound.map(({ what }) => `not found: ${what}`),
    '',
    caution,
    '',
  ].join('\n')
}

/** What is checked, what is only shown and why, and what was not found. */
export function coverageText(pack: RulePack): string {
  const { checked, shown, unknown, fromMemory, conflicting } = coverage(pack)
  return [
    `${pack.name} (${pack.region})`,
    `  checked by the program (${checked.length}):`,
    ...checked.map(({ id }) => `    ${id}`),
    `  to be read by a person (${shown.length}):`,
    ...shown.map((rule) => `    ${rule.id}: ${rule.shown ?? ''}`),
    `  not found (${unknown.length}):`,
    ...unknown.map(({ what }) => `    ${what}`),
    `  recalled and not read: ${fromMemory}; sources disagree: ${conflicting}`,
    '',
  ].join('\n')
}

/** Several regions side by side, subject by subject. */
export function sideBySideText(packs: readonly RulePack[]): string {
  const rows = comparePacks(packs).map(({ subject, quantity, cells, differs }) => {
    const head = `${subject}${quantity === undefined ? '' : `, ${quantity}`}${differs ? '' : ' (the same)'}`
    const lines = cells.map(({ region, rules, state }) => {
      if (state !== 'rules')
        return `  ${region}: ${state === 'silent' ? 'no rule carried' : 'searched for, not found'}`
      return rules.map((rule) => `  ${region}: ${rule.says}${manner(rule)}`).join('\n')
    })
    return [head, ...lines].join('\n')
  })
  return `${rows.join('\n\n')}\n\n${caution}\n`
}

const age = (pack: RulePack, today: string) =>
  `checked on ${pack.checkedOn}${isOlderThanAYear(pack, today) ? ', more than a year ago' : ''}`

function manner({ standing, confidence, shown }: Rule): string {
  const words = [
    ...(standing === 'law' ? [] : [standing]),
    ...(confidence === 'read' ? [] : [`confidence: ${confidence}`]),
    ...(shown === undefined ? [] : ['to be read, not checked']),
  ]
  return words.length === 0 ? '' : ` [${words.join('; ')}]`
}

function sourcesOf(pack: RulePack, rule: Rule): string {
  return rule.sources
    .flatMap((index) => {
      const source = pack.sources[index]
      return source ? [[source.title, source.date, source.url].filter(Boolean).join(', ')] : []
    })
    .join('; ')
}
