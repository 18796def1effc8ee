import type { Reply } from '@shared/contract/contract'

type Change = Reply<'backup:preview'>['changes'][number]

export const backupWords = {
  explain:
    'A backup of everything is made once a day and before every restore. Of today three are kept, of each day before one, ten in all. Photos stay files in the data folder.',
  make: 'Make a backup now',
  made: 'A backup was made.',
  kept: 'Backups here',
  none: 'No backup yet. The first is made as soon as there is something to keep.',
  when: 'Made',
  why: 'Why',
  size: 'Size',
  look: 'Look inside',
  lookAt: (when: string) => `Look inside the backup of ${when}`,
  reasons: {
    'by-hand': 'By hand',
    daily: 'Once a day',
    'before-restore': 'Before a restore',
    'taken-in': 'Brought from elsewhere',
  } as Readonly<Record<string, string>>,
  previewTitle: (when: string) => `Backup of ${when}`,
  wouldAdd: (count: number) => `Would add ${count}`,
  wouldChange: (count: number) => `Would put back ${count} that were changed since`,
  same: (count: number) => `${count} are the same here`,
  untouched: (count: number) => `${count} that are only here stay as they are`,
  nothing: 'Nothing here differs from this backup.',
  everything: 'Put everything back',
  missing: 'Only what is missing here',
  cancel: 'Cancel',
  restored: (added: number, changed: number) =>
    `Put back: ${added} added, ${changed} changed. The state before is kept as a backup.`,
  moving: 'Moving to another machine',
  movingText:
    'Save everything as one file, carry it over, and bring it in there. Things are matched by their id: what is only on one side stays, and you see what would change before anything does.',
  exportAll: 'Save everything as a file',
  bringIn: 'Bring in such a file',
  refused: (name: string, why: string) => `${name} was not taken: ${why}`,
  folder: 'Data folder',
  folderText: 'A plain folder that can be copied or kept the same on several machines.',
  choose: 'Choose another folder',
  copied: 'Everything was copied. The new folder is used from the next start; the old one is left as it is.',
  found: 'The data found there is used from the next start; the old folder is left as it is.',
  subjects: {
    pots: 'Design',
    waters: 'Water',
    packs: 'Own rules',
    materials: 'Materials',
    journal: 'Log',
    settings: 'Settings',
  } satisfies Record<Change['subject'], string>,
  what: 'What',
  name: 'Name',
  effect: 'Would be',
  effects: { add: 'added', change: 'put back', same: 'the same' } satisfies Record<Change['effect'], string>,
} as const
