import type { MenuGroups } from '@shared/contract/app'
import type { Command } from '@renderer/ui/commands.svelte'

/** The commands under their headings, for the menu of the desktop window; a command with two keys stands once. */
export function windowMenu(commands: readonly Command[]): MenuGroups {
  const groups = new Map<string, Map<string, MenuGroups[number]['entries'][number]>>()
  for (const { id, label, group, keys } of commands) {
    const entries = groups.get(group) ?? new Map()
    groups.set(group, entries)
    if (!entries.has(label))
      entries.set(label, { command: id, label, ...(keys === undefined ? {} : { keys }) })
  }
  return [...groups].map(([label, entries]) => ({ label, entries: [...entries.values()] }))
}
