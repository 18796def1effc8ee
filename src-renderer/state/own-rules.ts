import type { RulePack } from '@shared/schema/rule-pack'
import { err, type Result } from '@shared/units/result'
import { notices } from '@renderer/ui/notices.svelte'
import { packs } from './packs.svelte'
import { stateNotes as w } from './words'

/** Puts the reader's rules of a region back as they were before a change; none of theirs where there were none. */
export async function putRulesBack(region: string, before: RulePack | undefined): Promise<void> {
  const answer = before ? await packs.keep(before) : await packs.remove(region)
  if (!answer.ok) notices.say(answer.error.message, { tone: 'fails' })
}

/**
 * Takes a file of rules into use, with a way back. One with a fault in it is refused whole and by name, and the rules
 * in use stay.
 *
 * @returns the region, where it was taken
 */
export async function bringInRules(file: { name: string; text: string }): Promise<string | undefined> {
  const raw = parsed(file.text)
  const before = packs.rules(regionOf(raw))?.own
  const kept: Result<string> =
    raw === undefined ? err({ code: 'invalid', message: w.notRules }) : await packs.keep(raw)
  if (!kept.ok) {
    notices.say(w.rulesRefused(file.name, kept.error.message), { tone: 'fails' })
    return undefined
  }
  notices.say(w.rulesBrought(packs.find(kept.value)?.name ?? kept.value), {
    undo: () => void putRulesBack(kept.value, before),
    topic: kept.value,
  })
  return kept.value
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch {
    return undefined
  }
}

const regionOf = (raw: unknown) =>
  typeof raw === 'object' && raw !== null && 'region' in raw && typeof raw.region === 'string'
    ? raw.region
    : undefined
