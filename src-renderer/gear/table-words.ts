/** Words for bringing in a table. */
export const tableWords = {
  choose: 'Choose a file',
  another: 'Choose another file',
  noRows: (file: string) => `${file} has no rows that can be read. Nothing was brought in.`,
  columns: 'Which column holds what',
  notInFile: 'Not in the file',
  kept: (count: number) => (count === 1 ? '1 row fits' : `${count} rows fit`),
  leftOut: (count: number) => (count === 1 ? '1 row left out' : `${count} rows left out`),
  line: (line: number) => `Line ${line}`,
  noneBroken: 'Every row can be used.',
} as const
