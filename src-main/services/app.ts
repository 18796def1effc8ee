import type { Machine } from '@main/storage/machine'
import type { MenuGroups } from '@shared/contract/app'
import type { Handlers, Reply, Subject } from '@shared/contract/contract'
import { err, ok, type Result } from '@shared/units/result'
import type { SheetPrinter } from './printing'

/** What only the program around the services can do; each edition brings its own. */
export interface Host {
  readonly edition: 'desktop' | 'browser'
  readonly version: string
  readonly runtime: Record<string, string>
  /** Everything built into the program, with its licence. */
  readonly licences: () => Promise<Reply<'app:licences'>>
  /** Shows the page's commands as a menu, where there is one. */
  readonly showMenu: (groups: MenuGroups) => void
  /** The interface is done saving what it held; whether all of it could be. */
  readonly flushed: (saved: boolean) => void
  /** Asks for another data folder and moves there; left out where no folder can be asked for. */
  readonly chooseFolder?: (inUse: string) => Promise<Result<Reply<'app:choose-folder'>>>
  /** Left out where sheets are printed through a browser. */
  readonly printer?: SheetPrinter
}

export interface AppServiceOptions {
  readonly host: Host
  readonly dataFolder: string
  readonly machine: Machine
  readonly now: () => Date
  /** Why nothing can be saved, where that is so. */
  readonly readOnly: string | undefined
}

export function appHandlers(options: AppServiceOptions): Handlers<Subject<'app'>> {
  const { host, dataFolder, machine, now, readOnly } = options
  const info: Omit<Reply<'app:info'>, 'today'> = {
    version: host.version,
    edition: host.edition,
    runtime: host.runtime,
    dataFolder,
    machine,
    ...(readOnly === undefined ? {} : { readOnly }),
  }
  return {
    'app:info': () => Promise.resolve(ok({ ...info, today: localDay(now()) })),
    'app:licences': async () => ok(await host.licences()),
    'app:choose-folder': () =>
      host.chooseFolder?.(dataFolder) ??
      Promise.resolve(
        err({
          code: 'unavailable',
          message: 'Here the data folder is chosen when Potwright is started: add --data and the folder.',
        }),
      ),
    'app:menu': ({ groups }) => {
      host.showMenu(groups)
      return Promise.resolve(ok({}))
    },
    'app:flushed': ({ saved }) => {
      host.flushed(saved)
      return Promise.resolve(ok({}))
    },
  }
}

function localDay(at: Date): string {
  const month = String(at.getMonth() + 1).padStart(2, '0')
  return `${at.getFullYear()}-${month}-${String(at.getDate()).padStart(2, '0')}`
}
