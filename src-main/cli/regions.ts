import { comparePacks } from '@shared/rules/compare'
import { coverage, isOlderThanAYear } from '@shared/rules/coverage'
import type { RulePack } from '@shared/schema/rule-pack'
import { type Command, CommandRefused } from './command'
import { parseOptions } from './options'
import { coverageText, listText, packText, sideBySideText } from './regions-text'
import { packsFor } from './user-data'

/** What the rule packs say, where from and how old. */
export const regions: Command = {
  name: 'regions',
  does: 'rule packs: rules, sources and age; several side by side',
  usage: 'potwright regions [REGION…] [--coverage] [--data DIR] [--json]',
  async run(args, terminal) {
    const { values, positionals } = parseOptions(args, {
      coverage: { type: 'boolean' },
      data: { type: 'string' },
      json: { type: 'boolean' },
    })
    const all = (await packsFor(terminal, values.data)).map(({ pack }) => pack)
    const chosen = positionals.length === 0 ? all : positionals.map((region) => find(all, region))
    const today = terminal.now().toISOString().slice(0, 10)
    const [only, second] = chosen
    const json = (value: unknown) => `${JSON.stringify(value, undefined, 2)}\n`
    if (values.coverage)
      terminal.write(
        values.json
          ? json(chosen.map((pack) => ({ region: pack.region, ...coverage(pack) })))
          : chosen.map(coverageText).join('\n'),
      )
    else if (positionals.length === 0)
      terminal.write(values.json ? json(all.map((pack) => summary(pack, today))) : listText(all, today))
    else if (only && !second) terminal.write(values.json ? json(only) : packText(only, today))
    else terminal.write(values.json ? json(comparePacks(chosen)) : sideBySideText(chosen))
    return 0
  },
}

function find(packs: readonly RulePack[], region: string): RulePack {
  const pack = packs.find((known) => known.region === region)
  if (pack) return pack
  throw new CommandRefused(
    `there are no rules for ${region}; there are for ${packs.map((known) => known.region).join(', ')}`,
    'region',
  )
}

function summary(pack: RulePack, today: string) {
  const { checked, shown, unknown } = coverage(pack)
  return {
    region: pack.region,
    name: pack.name,
    authority: pack.authority,
    checkedOn: pack.checkedOn,
    olderThanAYear: isOlderThanAYear(pack, today),
    checked: checked.length,
    shown: shown.length,
    notFound: unknown.length,
  }
}
