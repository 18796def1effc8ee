import { bridge } from '@renderer/state/bridge'
import { locker } from '@renderer/state/locker.svelte'
import { askForPhotos, photoAsBase64 } from '@renderer/state/photo-exchange'
import { notices } from '@renderer/ui/notices.svelte'
import { photoWords as w } from '../words'

/** Lets the reader choose photos and keeps them with a pot, or with one of its parts. */
export async function addPhotos(about: { pot: string; part?: string; caption?: string }): Promise<void> {
  for (const file of await askForPhotos()) {
    const base64 = await photoAsBase64(file)
    if (base64 === undefined) {
      notices.say(w.tooOdd(file.name), { tone: 'fails' })
      continue
    }
    const answer = await locker.addPhoto({ ...about, base64 })
    if (!answer.ok) notices.say(answer.error.message, { tone: 'fails' })
    else notices.say(w.added)
  }
}

/** Where the page finds a photo; undefined where it is not in the data folder. */
export async function photoSource(file: string): Promise<string | undefined> {
  const answer = await bridge('photos:get', { file })
  return answer.ok ? `data:${answer.value.type};base64,${answer.value.base64}` : undefined
}
