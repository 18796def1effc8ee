import type { Reply } from '@shared/contract/contract'

type Change = Reply<'backup:preview'>['changes'][number]

const many = (count: number, one: string, more: string) =>
  `${count.toLocaleString()} ${count === 1 ? one : more}`

/** So many things of a kind. */
const counted: Record<Change['subject'], (count: number) => string> = {
  pots: (count) => many(count, 'design', 'designs'),
  waters: (count) => many(count, 'water', 'waters'),
  packs: (count) => many(count, 'set of own rules', 'sets of own rules'),
  materials: () => 'own materials',
  settings: () => 'the settings',
  photos: (count) => many(count, 'photo', 'photos'),
  journal: (count) => many(count, 'log entry', 'log entries'),
}

/** What is in changes of one effect, as "2 designs, 37 photos and 12 log entries"; empty where there are none. */
function things(changes: readonly Change[], effect: Change['effect']): string {
  const counts = new Map<Change['subject'], number>()
  for (const change of changes)
    if (change.effect === effect) counts.set(change.subject, (counts.get(change.subject) ?? 0) + change.count)
  return new Intl.ListFormat('en-GB').format([...counts].map(([subject, count]) => counted[subject](count)))
}

const sentences = (...parts: readonly [string, string][]) =>
  parts.flatMap(([said, what]) => (what === '' ? [] : [`${said} ${what}.`])).join(' ')

/** Photos that cannot be read, the first few by name. */
function lostPhotos(lost: readonly string[], said: (photos: string) => string): string {
  const rest = lost.length - mostNamed
  const named = lost.slice(0, mostNamed).join('; ')
  return `${said(many(lost.length, 'photo', 'photos'))} ${named}${rest > 0 ? `; and ${rest.toLocaleString()} more` : ''}.`
}
const mostNamed = 8

export const backupWords = {
  explain:
    'A backup of everything, photos too, is made once a day and before every restore. Of today three are kept, of each day before one, ten in all. A photo is kept once, however many backups hold it.',
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
  would: (changes: readonly Change[]) =>
    sentences(
      ['Would add', things(changes, 'add')],
      ['Would put back as they were then:', things(changes, 'change')],
      ['The same here:', things(changes, 'same')],
    ),
  untouched: (count: number) =>
    count === 0
      ? ''
      : `${many(count, 'thing that is only here stays as it is', 'things that are only here stay as they are')}.`,
  lostInBackup: (lost: readonly string[]) =>
    lostPhotos(lost, (photos) => `${photos} of this backup cannot be read and would be left out:`),
  nothing: 'Nothing here differs from this backup.',
  everything: 'Put everything back',
  missing: 'Only what is missing here',
  cancel: 'Cancel',
  restored: (changes: readonly Change[]) =>
    sentences(
      ['Added', things(changes, 'add')],
      ['Put back as they were then:', things(changes, 'change')],
      ['The state before is kept as', 'a backup'],
    ),
  lostInRestore: (lost: readonly string[]) =>
    lostPhotos(lost, (photos) => `${photos} could not be read and were left out; the rest is done:`),
  lostHere: (lost: readonly string[]) =>
    lostPhotos(lost, (photos) => `${photos} in the data folder cannot be read and are not in it:`),
  moving: 'Moving to another machine',
  movingText:
    'Save everything as one file, photos too, carry it over, and bring it in there or drop it on the window. Things are matched by their id: what is only on one side stays, and you see what would change before anything does.',
  exportAll: 'Save everything as a file',
  bringIn: 'Bring in such a file',
  busy: {
    make: 'Making a backup',
    restore: 'Putting back',
    save: 'Saving everything',
    bringIn: 'Bringing in',
  },
  ofPhotos: (label: string, { done, of }: { done: number; of: number }) =>
    `${label}: photo ${(done + 1).toLocaleString()} of ${of.toLocaleString()}`,
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
    photos: 'Photos',
    journal: 'Log',
    settings: 'Settings',
  } satisfies Record<Change['subject'], string>,
  named: ({ subject, name, count }: Change) => name ?? counted[subject](count),
  what: 'What',
  name: 'Name',
  effect: 'Would be',
  effects: { add: 'added', change: 'put back', same: 'the same' } satisfies Record<Change['effect'], string>,
} as const
