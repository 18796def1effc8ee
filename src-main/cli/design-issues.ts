import { consistency } from '@shared/design/consistency'
import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import type { ReaderLocale } from '@shared/units/locale'
import { CommandRefused, type Terminal } from './command'

/**
 * Names every field of a design that contradicts another, on standard error. An entrance that its wall has no room
 * for is refused; the rest, as a float that its rope drags under, is what the verdicts are about.
 */
export function nameIssues(
  pot: Pot,
  { materials, locale }: { materials: Materials; locale: ReaderLocale },
  where: string,
  terminal: Terminal,
): void {
  const issues = consistency(pot, materials, locale).filter(({ kind }) => kind === 'impossible')
  const noRoom = issues.find(({ path }) => path.startsWith('entrances.'))
  if (noRoom) throw new CommandRefused(`${where}: ${noRoom.message} Nothing was changed.`, noRoom.path)
  for (const { message, path } of issues) terminal.writeError(`${where}: ${message} [${path}]\n`)
}
