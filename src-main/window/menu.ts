import type { MenuItemConstructorOptions } from 'electron'
import { menuGroups, type MenuGroup } from './menu-entries'

/** The menu bar: the page's own commands, and what every window of the system has. */
export function menuTemplate(
  platform: NodeJS.Platform,
  send: (command: string) => void,
): MenuItemConstructorOptions[] {
  const [pot, edit, go, help] = menuGroups.map((group) => menuOf(group, send))
  if (!pot || !edit || !go || !help) throw new Error('menuTemplate: a menu is missing')
  const line: MenuItemConstructorOptions = { type: 'separator' }
  const isMac = platform === 'darwin'
  return [
    ...(isMac ? [{ role: 'appMenu' as const }] : []),
    isMac ? pot : extended(pot, [line, { role: 'quit' }]),
    extended(edit, [line, { role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }]),
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
    go,
    { role: 'windowMenu' },
    help,
  ]
}

function menuOf(group: MenuGroup, send: (command: string) => void) {
  const submenu = group.entries.map((entry): MenuItemConstructorOptions =>
    entry === 'line'
      ? { type: 'separator' }
      : {
          id: entry.command,
          label: entry.label,
          click: () => send(entry.command),
          ...(entry.keys === undefined ? {} : { accelerator: entry.keys, registerAccelerator: false }),
        },
  )
  return { label: group.label, submenu }
}

const extended = (
  menu: { label: string; submenu: MenuItemConstructorOptions[] },
  more: MenuItemConstructorOptions[],
): MenuItemConstructorOptions => ({ ...menu, submenu: [...menu.submenu, ...more] })
