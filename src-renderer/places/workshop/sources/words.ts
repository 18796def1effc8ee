export const sourceWords = {
  explain:
    'Everything below is read from what the program works with. Where a source is weak, it says so; the list with equations and ranges is in the file models.md that comes with the program.',
  models: 'Models',
  modelsAside: (count: number) => `${count} with a source`,
  weak: 'What is weak',
  weakIntro: 'Rests on judgement or memory, the widest spread first:',
  weakRow: (label: string, low: string, high: string) => `${label}: ${low} to ${high}`,
  seeFigures: 'See and change every figure',
  materials: 'Materials',
  materialsAside: (rows: number) => `${rows} rows`,
  rules: 'Rules',
  rulesAside: (packs: number) => `${packs} regions`,
  checkedOn: (day: string) => `Last checked on ${day}`,
  decide: 'The official rules of the day decide.',
  stations: 'Tide and current stations',
  stationsAside: (count: number) => `${count.toLocaleString()} stations`,
  database: (version: string) =>
    `From the open tide database, version ${version}. Predictions are not for navigation.`,
  stationsOf: (count: number) => (count === 1 ? '1 station' : `${count.toLocaleString()} stations`),
  programs: 'Programs built in',
  programsAside: (count: number) => `${count} packages`,
  showText: 'Licence text',
} as const
