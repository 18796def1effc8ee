import { expect, test } from 'vitest'
import { subjects, type Rule } from '@shared/schema/rule-pack'
import { citedHosts, isCitedPage } from './cited-hosts'
import { readPacks } from './packs'
import { searchPacks } from './search'
import { isOldSource, sourceAge } from './source-age'

const packs = [...readPacks().values()]
const names = Object.fromEntries(subjects.map((subject) => [subject, `About ${subject}`])) as Record<
  Rule['subject'],
  string
>
const found = (query: string) => searchPacks(packs, query, names)
const washington = packs.find((pack) => pack.region === 'US-WA')
if (!washington) throw new Error('no pack')

test('every word has to be there, in any order, and regions without a hit are left out', () => {
  const hits = found('cord THICKER 1/8')
  expect(hits.flatMap((hit) => hit.rules.map((rule) => rule.id))).toContain('US-WA:cord-size')
  expect(found('cord washington').map((hit) => hit.pack.region)).toEqual(['US-WA'])
  expect(found('cord zeppelin')).toEqual([])
  expect(found('  ,')).toEqual([])
})

test('species are found by common and by scientific name', () => {
  const ids = (query: string) => found(query).flatMap((hit) => hit.species.map((one) => one.slug))
  expect(ids('metacarcinus')).toContain('metacarcinus-magister')
  expect(ids('dungeness')).toContain('metacarcinus-magister')
})

test('a region is old by the day it was checked or by its youngest copy, never by one that has no date', () => {
  const dated = (...dates: (string | undefined)[]) => ({
    ...washington,
    checkedOn: '2026-11-25',
    sources: dates.map((date) => ({ title: 'A page', kind: 'official' as const, ...(date ? { date } : {}) })),
  })
  expect(sourceAge(dated('2019', '2026-10-02', 'undated copy'), '2026-11-25')).toEqual({
    newest: '2026-10-02',
    undated: 1,
    isOld: false,
  })
  expect(sourceAge(dated('2019', '2025-11'), '2026-11-25')).toMatchObject({ newest: '2025-11', isOld: true })
  expect(sourceAge(dated('undated copy', undefined), '2026-11-25')).toEqual({ undated: 2, isOld: false })
  expect(sourceAge(dated('undated copy'), '2027-11-26').isOld).toBe(true)
  expect(isOldSource({ title: 'x', kind: 'law', date: '20191' }, '2026-11-25')).toBe(false)
  expect(isOldSource({ title: 'x', kind: 'law', date: '2019' }, '2026-11-25')).toBe(true)
})

test('only plain secure pages on a cited host may be opened', () => {
  const hosts = citedHosts([
    { sources: [{ url: 'https://rules.example/a' }, { url: 'http://old.example/b' }] },
  ])
  expect([...hosts]).toEqual(['rules.example'])
  expect(isCitedPage('https://rules.example/other', hosts)).toBe(true)
  for (const address of [
    'http://rules.example/a',
    'https://old.example/b',
    'https://me@rules.example/',
    'https://rules.example:8443/',
    'javascript:alert(1)',
    'rules.example',
  ])
    expect(isCitedPage(address, hosts)).toBe(false)
})
