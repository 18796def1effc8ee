import type { DemoCrew } from '@shared/contract/demo'
import { notices } from '@renderer/ui/notices.svelte'
import { bridge } from './bridge'
import { saveOpenWork } from './save-open-work'

/** Whether the demo stands in place of the reader's own data, and which crew of it. */
class Demo {
  crew = $state<DemoCrew>()

  async load(): Promise<void> {
    const answer = await bridge('demo:state', {})
    if (answer.ok) this.crew = answer.value.crew
  }

  show = (crew: DemoCrew) => this.#change(() => bridge('demo:show', { crew }))
  remove = () => this.#change(() => bridge('demo:remove', {}))

  /** Once what lies open is saved where it belongs, the data changes and everything is read again. */
  async #change(ask: () => ReturnType<typeof bridge<'demo:show'>>): Promise<void> {
    if (!(await saveOpenWork())) return
    const answer = await ask()
    if (answer.ok) {
      history.replaceState(null, '', '#/bench')
      location.reload()
    } else notices.say(answer.error.message, { tone: 'fails' })
  }
}

export const demo = new Demo()
