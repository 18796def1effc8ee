import { bridge } from '@renderer/state/bridge'
import { settings } from '@renderer/state/settings.svelte'
import { notices } from '@renderer/ui/notices.svelte'
import { usualPaper, type Paper } from './paper'
import { printWords as w } from './words'

/** What goes from the screen to paper: which paper, and by which way. */
class PrintDesk {
  paper = $derived.by((): Paper => settings.current.paper ?? usualPaper(navigator.languages))
  /** Name of the file a PDF is offered under, set by the sheet. */
  fileName = $state('Potwright')

  choosePaper(paper: Paper): void {
    void settings.set({ paper })
  }

  async toPaper(): Promise<void> {
    const answer = await bridge('print:paper', {})
    if (answer.ok) return
    if (window.bridge) notices.say(answer.error.message, { tone: 'fails' })
    else window.print()
  }

  async toPdf(): Promise<void> {
    const answer = await bridge('print:pdf', { fileName: this.fileName })
    if (answer.ok) {
      if (answer.value.saved) notices.say(w.saved)
    } else if (window.bridge) notices.say(answer.error.message, { tone: 'fails' })
    else {
      notices.say(w.browserPdf)
      window.print()
    }
  }
}

export const printDesk = new PrintDesk()
