import type { Request } from '@shared/contract/contract'
import { bridge } from '@renderer/state/bridge'
import { locker } from '@renderer/state/locker.svelte'
import { offerTable } from '@renderer/state/offer-table'
import { notices } from '@renderer/ui/notices.svelte'

/** Hands over one table of the locker as CSV. */
export async function exportTable(what: Request<'locker:export'>['what']): Promise<void> {
  const answer = await bridge('locker:export', { what, aheadMonths: locker.aheadMonths })
  if (answer.ok) offerTable(answer.value.fileName, answer.value.text)
  else notices.say(answer.error.message, { tone: 'fails' })
}
