import type { Request } from '@shared/contract/contract'
import { bridge } from '@renderer/state/bridge'
import { offerFile } from '@renderer/state/file-exchange'
import { locker } from '@renderer/state/locker.svelte'
import { notices } from '@renderer/ui/notices.svelte'

/** Hands over one table of the locker as CSV. */
export async function exportTable(what: Request<'locker:export'>['what']): Promise<void> {
  const answer = await bridge('locker:export', { what, aheadMonths: locker.aheadMonths })
  if (answer.ok) offerFile(answer.value.fileName, answer.value.text, 'text/csv')
  else notices.say(answer.error.message, { tone: 'fails' })
}
