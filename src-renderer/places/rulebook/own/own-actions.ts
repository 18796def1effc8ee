import { emptyOwnPack, withoutRule } from '@shared/rules/own-rules'
import { withoutSpecies } from '@shared/rules/own-species'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Result } from '@shared/units/result'
import { askForFiles, offerFile } from '@renderer/state/file-exchange'
import { bringInRules, putRulesBack } from '@renderer/state/own-rules'
import { packs } from '@renderer/state/packs.svelte'
import { today } from '@renderer/state/today'
import { notices } from '@renderer/ui/notices.svelte'
import { rulebookView } from '../rulebook-view.svelte'
import { ownWords as w } from '../words'

/** The reader's pack of a region as it stands, or an empty one laid over the shipped rules. */
export function ownFor(region: string): RulePack | undefined {
  const rules = packs.rules(region)
  return rules?.own ?? (rules?.builtIn && emptyOwnPack(rules.builtIn, today()))
}

/** Keeps a changed pack, says so, and offers the way back to what was there before. */
export async function keepOwn(next: RulePack, says: string): Promise<Result<string>> {
  const before = packs.rules(next.region)?.own
  const kept = await packs.keep(next)
  if (kept.ok) notices.say(says, { undo: () => void putRulesBack(next.region, before), topic: next.region })
  return kept
}

export const removeRule = (region: string, ruleId: string) =>
  leaveOut(region, (own) => withoutRule(own, ruleId))

export const removeSpecies = (region: string, id: string) =>
  leaveOut(region, (own) => withoutSpecies(own, id))

/** Takes one entry away; the last one laid over shipped rules takes the file along. */
async function leaveOut(region: string, without: (own: RulePack) => RulePack): Promise<void> {
  const rules = packs.rules(region)
  const own = rules?.own
  if (!own) return
  const next = without(own)
  const says = w.ruleRemoved(rules.pack.name)
  const isEmpty = next.over !== undefined && next.rules.length + next.species.length === 0
  if (isEmpty) await removeOwn(region, says)
  else report(await keepOwn(next, says))
}

/** Removes all of the reader's rules of a region, with a way back. */
export async function removeOwn(region: string, says?: string): Promise<void> {
  const name = packs.find(region)?.name ?? region
  const answer = await packs.remove(region)
  if (answer.ok)
    notices.say(says ?? w.removed(name), {
      undo: () => void putRulesBack(region, answer.value),
      topic: region,
    })
  else report(answer)
}

export function exportOwn(region: string): void {
  const own = packs.rules(region)?.own
  if (own) offerFile(`${region}.rules.json`, `${JSON.stringify(own, null, 2)}\n`)
}

/** Lets the reader choose files of rules; one with a fault in it is refused whole. */
export async function importOwn(): Promise<void> {
  for (const file of await askForFiles('.json,application/json')) {
    const region = await bringInRules(file)
    if (region) rulebookView.open(region)
  }
}

function report(answer: Result<unknown>): void {
  if (!answer.ok) notices.say(answer.error.message, { tone: 'fails' })
}
