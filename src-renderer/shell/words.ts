import type { PlaceId } from '@renderer/state/route.svelte'

/** Words of the frame around the places. */
export const placeWords: Record<PlaceId, { name: string; does: string }> = {
  bench: { name: 'Bench', does: 'Put a pot together and check it' },
  waters: { name: 'Waters', does: 'Where you fish, and what the tide does there' },
  match: { name: 'Match', does: 'Every design against every water' },
  locker: { name: 'Locker', does: 'The pots you own and how they wear' },
  runs: { name: 'Runs', does: 'A day of setting and hauling' },
  season: { name: 'Season', does: 'What to inspect, replace and buy' },
  rulebook: { name: 'Rulebook', does: 'Every region’s rules, with their source and date' },
  workshop: { name: 'Workshop', does: 'Figures, materials, sources and backups' },
  gauge: { name: 'Gauge', does: 'How to measure each species' },
}

export const shellWords = {
  appName: 'Potwright',
  places: 'Places',
  helpers: 'Helpers',
  skip: 'Go to the content',
  loading: (place: string) => `Opening ${place}`,
  notOpened: (place: string) => `${place} could not be opened. Nothing was lost. Start Potwright again.`,
  notStarted: 'What is kept could not be read. Nothing was lost. Start Potwright again.',
  goTo: (place: string) => `Go to ${place}`,
  settings: 'Units, look and files',
  units: 'Units',
  metric: 'Metric',
  imperial: 'Feet and pounds',
  theme: 'Look',
  system: 'As the system',
  light: 'Light',
  dark: 'Dark',
  commands: 'Find anything',
  keys: 'Keys',
  undo: 'Undo',
  redo: 'Redo',
  saved: 'Saved',
  saving: 'Saving',
  notSaved: 'Not saved',
  dataFolder: 'Your files are in',
  version: (version: string) => `Version ${version}`,
  readOnly: (why: string) => `${why} You can look at everything and print it.`,
  toSettle: (first: string, more: number) =>
    `${first}${more > 0 ? ` ${more} more like it.` : ''} The shelf of designs and the list of waters say what can be done.`,
  openDesign: (name: string) => `Open ${name}`,
  groups: { go: 'Go', look: 'Look', edit: 'Edit', recent: 'Recent' },
} as const
