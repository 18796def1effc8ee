import type { Notice } from '@shared/contract/bridge'
import { bench } from '@renderer/state/bench.svelte'
import { bridge } from '@renderer/state/bridge'
import { bringIn } from '@renderer/state/bring-in'
import { demo } from '@renderer/state/demo.svelte'
import { locker } from '@renderer/state/locker.svelte'
import { onHostNotice } from '@renderer/state/host-notices'
import { longWork } from '@renderer/state/long-work.svelte'
import { materials } from '@renderer/state/materials.svelte'
import { packs } from '@renderer/state/packs.svelte'
import { route } from '@renderer/state/route.svelte'
import { settings } from '@renderer/state/settings.svelte'
import { hasUnsavedWork, saveOpenWork } from '@renderer/state/save-open-work'
import { shelf, waters } from '@renderer/state/shelf'
import { commands } from '@renderer/ui/commands.svelte'
import { notices } from '@renderer/ui/notices.svelte'
import { findPlace } from './places'
import { shellWords as w } from './words'

/** Reads what is kept, puts the bench back as it was left, and listens for what changes underneath. */
export async function startUp(): Promise<void> {
  await Promise.all([
    settings.load().then(fetchFirstPlace),
    shelf.load(),
    waters.load(),
    packs.load(),
    materials.load(),
    demo.load(),
  ])
  bench.resume()
  void sayWhatIsWrong()
  onHostNotice((notice) => void heed(notice))
  addEventListener('blur', () => void saveOpenWork())
  // Back from making room on a full disk, say: what could not be saved is tried again.
  addEventListener('focus', () => void saveOpenWork())
  addEventListener('pagehide', () => void saveOpenWork())
  // The desktop window asks by itself; a browser has to be told that there is something to ask about.
  if (!window.bridge) addEventListener('beforeunload', (event) => hasUnsavedWork() && event.preventDefault())
}

/** Goes to the place that was left last, and fetches it while the rest of what is kept is read. */
async function fetchFirstPlace(): Promise<void> {
  if (location.hash === '' && settings.current.place) route.go(settings.current.place)
  // A place that cannot be fetched is told of where it would stand.
  await findPlace(route.place)
    ?.load()
    .catch(() => undefined)
}

/** What somebody should know before they go on: nothing can be saved, or a file waits for a decision. */
async function sayWhatIsWrong(): Promise<void> {
  const about = await bridge('app:info', {})
  if (about.ok && about.value.readOnly) notices.say(w.readOnly(about.value.readOnly), { tone: 'fails' })
  const [first, ...more] = [...shelf.problems, ...waters.problems]
  if (first) notices.say(w.toSettle(first.message, more.length), { tone: 'fails' })
}

async function heed(notice: Notice): Promise<void> {
  switch (notice.kind) {
    case 'closing':
      await bridge('app:flushed', { saved: await saveOpenWork() })
      return
    case 'command':
      commands.run(notice.command)
      return
    case 'opened':
      await bringIn([{ name: notice.fileName, text: notice.text }])
      return
    case 'trouble':
      notices.say(notice.message, { tone: 'fails' })
      return
    case 'progress':
      longWork.heed(notice)
      return
    case 'changed':
      await reread(notice.subject)
  }
}

async function reread(subject: Extract<Notice, { kind: 'changed' }>['subject']): Promise<void> {
  if (subject === 'pots') {
    await shelf.load()
    bench.catchUp()
  } else if (subject === 'waters') await waters.load()
  else if (subject === 'packs') await packs.load()
  else if (subject === 'materials') await materials.load()
  else if (subject === 'settings') await settings.load()
  else if (subject === 'journal' && locker.loaded) await locker.load()
}
