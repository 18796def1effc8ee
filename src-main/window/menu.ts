import type { MenuItemConstructorOptions } from 'electron'
import type { MenuGroups } from '@shared/contract/app'

type Item = MenuItemConstructorOptions
type Entry = MenuGroups[number]['entries'][number]

const line: Item = { type: 'separator' }

/** The menu bar: what every window of the system has, and the page's own commands under their headings. */
export function menuTemplate(
  platform: NodeJS.Platform,
  groups: MenuGroups,
  choose: (command: string) => void,
): Item[] {
  const own = groups.map(({ label, entries }) => ({
    label,
    submenu: entries.map((entry) => itemOf(entry, choose)),
  }))
  return [
    platform === 'darwin' ? { role: 'appMenu' } : { label: 'Potwright', submenu: [{ role: 'quit' }] },
    { label: 'Text', submenu: [{ role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }] },
    ...own,
    {
      label: 'View',
      submenu: [
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { role: 'resetZoom' },
        line,
        { role: 'togglefullscreen' },
      ],
    },
    { role: 'windowMenu' },
  ]
}

function itemOf({ command, label, keys }: Entry, choose: (command: string) => void): Item {
  const accelerator = keys === undefined ? undefined : acceleratorOf(keys)
  return {
    id: command,
    label,
    click: () => choose(command),
    // Shown only: the page itself listens for its keys, the same in both editions.
    ...(accelerator === undefined ? {} : { accelerator, registerAccelerator: false }),
  }
}

/** Keys as the page names them, `Ctrl+Shift+Z`, in the system's way; undefined where it has no name for them. */
export function acceleratorOf(keys: string): string | undefined {
  const parts = /^((?:Ctrl\+|Alt\+|Shift\+)*)([A-Z0-9]|F\d{1,2}|Delete|Home|End|Escape|Enter)$/.exec(keys)
  return parts ? `${(parts[1] ?? '').replace('Ctrl+', 'CmdOrCtrl+')}${parts[2] ?? ''}` : undefined
}
