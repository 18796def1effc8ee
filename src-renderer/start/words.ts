/** Words of the first steps and of the demo. */
export const startWords = {
  title: 'Where to start',
  about:
    'Put a pot together, say where it is fished, and read whether it is legal, holds, shows, lifts, fishes and stows.',
  shape: 'Start from a shape',
  shapeHint: 'Five common ones. Every size can be changed.',
  demo: 'Look at the demo',
  demoHint: 'An invented crew with pots, waters and a season. Your own data is left alone.',
  file: 'Open a file',
  fileHint: 'A design or a water that somebody gave you.',
  tour: 'Show me round',
  skip: 'Skip this',
  command: 'Where to start',
  crews: { north: 'Puget Sound crew, feet and pounds', south: 'Queensland crew, metric' },
  showDemo: (crew: string) => `Demo: ${crew}`,
  removeDemo: 'Remove the demo',
  group: 'Start',
  banner: 'This is the demo. Its people, places and catches are invented; your own data lies untouched.',
  other: (crew: string) => `See the ${crew}`,
  opening: 'Laying out the demo',
} as const
