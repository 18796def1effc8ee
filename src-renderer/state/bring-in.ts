import { notices } from '@renderer/ui/notices.svelte'
import { bench } from './bench.svelte'
import { bringInRules } from './own-rules'
import { route } from './route.svelte'
import { shelf, waters } from './shelf'
import { stateNotes as w } from './words'

interface TextFile {
  readonly name: string
  readonly text: string
}

/** Takes files in, designs, waters and rules alike; each that is not taken says why, and nothing else is touched. */
export async function bringIn(files: readonly TextFile[]): Promise<void> {
  for (const file of files) {
    if (isRules(file.text)) {
      const region = await bringInRules(file)
      if (region) route.go('rulebook', region)
      continue
    }
    if (isWater(file.text)) {
      const answer = await waters.import(file.text)
      if (answer.ok) route.go('waters', answer.value.stored.document.id)
      notices.say(
        answer.ok ? w.brought(answer.value.stored.document.name) : w.refused(file.name, answer.error.message),
        {
          tone: answer.ok ? 'plain' : 'fails',
        },
      )
      continue
    }
    const answer = await shelf.import(file.text)
    if (answer.ok) {
      await bench.open(answer.value.stored.document)
      route.go('bench')
      notices.say(w.brought(answer.value.stored.document.name))
    } else notices.say(w.refused(file.name, answer.error.message), { tone: 'fails' })
  }
}

const isWater = (text: string) => /"format"\s*:\s*"potwright\/water"/.test(text)
const isRules = (text: string) => /"format"\s*:\s*"potwright\/rules"/.test(text)
