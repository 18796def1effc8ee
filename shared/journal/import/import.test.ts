import { expect, test } from 'vitest'
import { foldJournal } from '../fold'
import { mergeJournals } from '../merge'
import { dayCardWords, readDayCard } from './day-card'
import { inventoryWords, readInventory } from './inventory'
import { matchColumns } from './match-columns'
import { readTable } from './table'

const nowMs = Date.parse('2026-05-03T00:00:00.000Z')
const pots = ['1', '2', '3'].map((number) => ({ pot: `p${number}`, number, design: 'round', parts: [] }))
const state = foldJournal(
  mergeJournals([
    [{ version: 1, id: 'a', machine: 'm', seq: 1, at: '2026-04-01T00:00:00.000Z', kind: 'add-pots', pots }],
  ]),
  nowMs,
)
const context = { day: '2026-05-01', offsetMinutes: -420, run: 'card', nowMs }
const card = (text: string) => {
  const table = readTable(text)
  return readDayCard(table, matchColumns(table.columns, dayCardWords), state, context)
}

test('a day card becomes settings and hauls in UTC, a haul past midnight on the next day', () => {
  const { rows, broken } = card(
    'Float;Time set;Hauled;Keepers;Short;Bait left\n1;06:40;11:10;2;5;none\n2;22:00;05:30;1;;\n',
  )
  expect(broken).toEqual([])
  expect(rows[0]?.events).toEqual([
    { kind: 'set', at: '2026-05-01T13:40:00.000Z', pot: 'p1', run: 'card' },
    {
      kind: 'haul',
      at: '2026-05-01T18:10:00.000Z',
      pot: 'p1',
      kept: 2,
      undersized: 5,
      female: undefined,
      other: undefined,
      baitLeft: 'none',
    },
  ])
  expect(rows[1]?.events.map((event) => event.at)).toEqual([
    '2026-05-02T05:00:00.000Z',
    '2026-05-02T12:30:00.000Z',
  ])
})

test('rows of a day card that cannot be used are told with their line and reason, the rest is kept', () => {
  const { rows, broken } = card(
    [
      'number,set,hauled,kept,date',
      '1,06:40,,,',
      '9,06:45,,,',
      '2,,07:00,1,',
      '3,25:00,,,',
      ',06:00,,,',
      '3,06:50,07:50,-1,',
      '3,07:00,08:00,1,2027-01-01',
      '3,07:00,08:00,2,,surplus',
      '1,,11:00,1,',
    ].join('\n'),
  )
  expect(rows.map((row) => row.line)).toEqual([2, 10])
  expect(broken).toEqual([
    { line: 3, reason: 'There is no pot with the number 9.' },
    { line: 4, reason: 'Pot 2 was hauled but was never set.' },
    { line: 5, reason: 'The time set “25:00” is not a time like 06:40.' },
    { line: 6, reason: 'It has no float number.' },
    { line: 7, reason: 'Kept “-1” is not a whole number.' },
    { line: 8, reason: 'It lies in the future.' },
    { line: 9, reason: 'It has 6 cells under 5 columns.' },
  ])
})

const inventory = (text: string) => {
  const table = readTable(text)
  const match = matchColumns(table.columns, inventoryWords)
  return {
    match,
    ...readInventory(table, match, state, {
      designs: { 'creek round': 'd1' },
      usualDesign: 'd0',
      today: '2026-05-03',
    }),
  }
}

test('an inventory with a row a part makes pots with their parts', () => {
  const {
    pots: read,
    broken,
    match,
  } = inventory(
    '\uFEFFPot,Type,Part,Material,Diameter (mm),Length (m),Paid,Bought\n11,Creek round,Rope,PP,8,20,18.50,2025-04-01\n11,,buoy,PVC,200,,12,\n12,,,,,,,\n',
  )
  expect(match).toMatchObject({
    number: 'Pot',
    kind: 'Part',
    diameterMm: 'Diameter (mm)',
    installedOn: 'Bought',
    cost: 'Paid',
  })
  expect(broken).toEqual([])
  expect(read).toEqual([
    {
      ...{ number: '11', design: 'd1', lines: [2, 3] },
      parts: [
        { kind: 'rope', material: 'PP', diameterMm: 8, lengthM: 20, cost: 18.5, installedOn: '2025-04-01' },
        { kind: 'float', material: 'PVC', diameterMm: 200, cost: 12, installedOn: '2026-05-03' },
      ],
    },
    { number: '12', design: 'd0', lines: [4], parts: [] },
  ])
})

test('numbers in use, unknown parts, designs and dates are refused row by row', () => {
  const { pots: read, broken } = inventory(
    [
      'number,design,part,installed on',
      '1,,rope,',
      '20,,anchor,',
      '21,Odd,rope,',
      '22,,rope,2026-13-01',
      '22,,rope,2030-01-01',
      '23,,rope,2026-01-01',
      '24,,,',
      '24,,,',
    ].join('\n'),
  )
  expect(read.map((pot) => pot.number)).toEqual(['23', '24'])
  expect(broken.map((row) => row.line)).toEqual([2, 3, 4, 5, 6, 9])
})

test('a figure that is a word, or that no part can have, is refused by its column; a unit after it is not', () => {
  const { pots: read, broken } = inventory(
    [
      'number,part,diameter,length,cost',
      '30,rope,thick,20,',
      '31,rope,0,20,',
      '32,rope,8 mm,20 m,"18,50"',
      '33,rope,8,-3,',
      '34,rope,8,20,2e9',
    ].join('\n'),
  )
  expect(read).toMatchObject([{ number: '32', parts: [{ diameterMm: 8, lengthM: 20, cost: 18.5 }] }])
  expect(broken).toEqual([
    { line: 2, reason: 'The diameter “thick” is not a number.' },
    { line: 3, reason: 'The diameter 0 is more or less than a part can have.' },
    { line: 5, reason: 'The length “-3” is not a number.' },
    { line: 6, reason: 'The cost 2000000000 is more or less than a part can have.' },
  ])
})

test('an open quote spoils its own rows and no others', () => {
  const table = readTable('number,note\n1,fine\n2,"open\n')
  expect(table.rows.map((row) => row.line)).toEqual([2])
  expect(table.broken).toEqual([{ line: 3, reason: 'A quote is not closed.' }])
})
