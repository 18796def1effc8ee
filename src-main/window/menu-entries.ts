/** One entry of the window's menu that the page carries out. */
export interface MenuEntry {
  readonly command: string
  readonly label: string
  /** Shown beside the entry. The page itself listens for the keys, the same in both editions. */
  readonly keys?: string
}

export interface MenuGroup {
  readonly label: string
  readonly entries: readonly (MenuEntry | 'line')[]
}

/** The menus whose entries are commands of the page. */
export const menuGroups: readonly MenuGroup[] = [
  {
    label: 'Pot',
    entries: [
      { command: 'pot:new', label: 'New pot', keys: 'CmdOrCtrl+N' },
      { command: 'pot:copy', label: 'Copy of this pot', keys: 'CmdOrCtrl+D' },
      'line',
      { command: 'pot:import', label: 'Import…', keys: 'CmdOrCtrl+O' },
      { command: 'pot:export', label: 'Export…', keys: 'CmdOrCtrl+E' },
      'line',
      { command: 'print', label: 'Print…', keys: 'CmdOrCtrl+P' },
    ],
  },
  {
    label: 'Edit',
    entries: [
      { command: 'undo', label: 'Undo', keys: 'CmdOrCtrl+Z' },
      { command: 'redo', label: 'Redo', keys: 'CmdOrCtrl+Shift+Z' },
    ],
  },
  {
    label: 'Go',
    entries: [
      { command: 'go-bench', label: 'Bench', keys: 'Alt+1' },
      { command: 'go-waters', label: 'Waters', keys: 'Alt+2' },
      { command: 'go-match', label: 'Match', keys: 'Alt+3' },
      { command: 'go-locker', label: 'Locker', keys: 'Alt+4' },
      { command: 'go-runs', label: 'Runs', keys: 'Alt+5' },
      { command: 'go-season', label: 'Season', keys: 'Alt+6' },
      'line',
      { command: 'go-rulebook', label: 'Rulebook' },
      { command: 'go-gauge', label: 'Gauge' },
    ],
  },
  {
    label: 'Help',
    entries: [
      { command: 'find', label: 'Find a command…', keys: 'CmdOrCtrl+K' },
      { command: 'keys', label: 'Keys', keys: '?' },
      { command: 'tour', label: 'Guided tour' },
      { command: 'sources', label: 'Sources' },
      { command: 'about', label: 'About Potwright' },
    ],
  },
]
