import { bench, describe } from 'vitest'
import { judge } from '@shared/rules/judge'
import { parsePack } from '@shared/rules/pack'
import { packFiles, readPacks } from '@shared/rules/packs'
import { whereLegal } from '@shared/rules/where-legal'
import { goldenCases } from '../fixtures/golden'

const texts = [...packFiles.values()].map((pack) => JSON.stringify(pack))
const packs = readPacks()
const golden = goldenCases[0]
if (!golden) throw new Error('no golden pot to measure with')
const home = packs.get(golden.region)

describe('rules', () => {
  bench(`load and validate all ${texts.length} packs (under 100 ms)`, () => {
    for (const text of texts) {
      const read = parsePack(JSON.parse(text))
      if (!read.ok) throw new Error(read.error.message)
    }
  })

  bench('one design against every pack (under 50 ms)', () => {
    whereLegal([...packs.values()], { pot: golden.pot, trip: golden.trip, now: '2026-12-05' })
  })

  bench('one design against its own region', () => {
    if (home) judge(home, golden)
  })
})
