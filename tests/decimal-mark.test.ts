import { billOfMaterials } from '@shared/design/bill-of-materials'
import { consistency } from '@shared/design/consistency'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { defaultCoefficients } from '@shared/physics/coefficients'
import { gaugeEntries, gaugeVerdict } from '@shared/rules/gauge'
import { judge } from '@shared/rules/judge'
import { readPacks } from '@shared/rules/packs'
import { partKinds } from '@shared/schema/gear'
import type { Check } from '@shared/schema/check'
import type { RulePack } from '@shared/schema/rule-pack'
import { unitSystems, type DecimalMark } from '@shared/units/locale'
import { singleChanges } from '@shared/verdicts/best-change'
import { fullCheck } from '@shared/verdicts/full-check'
import { wearAssumptions } from '@shared/wear/assumptions'
import { partLife } from '@shared/wear/part-life'
import { monthsSaid } from '@shared/wear/wording'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { completePot } from './fixtures/arbitrary-pot'
import { arbitraryTrip } from './fixtures/arbitrary-trip'
import { channel, standard, trip } from './fixtures/checked-pot'
import { goldenCases } from './fixtures/golden'

/* Every sentence that is made of figures, by its makers: no mark of another locale is left in it. */

const packs = readPacks()
const marked = (mark: DecimalMark) => new RegExp(`\\d\\${mark}\\d`)

/** Says the same thing for a reader of a comma and for one of a full stop, and holds the two against each other. */
function sameButForTheMark(say: (decimalMark: DecimalMark) => readonly string[]): boolean {
  const [comma, stop] = [say(','), say('.')]
  for (const sentence of comma) expect(sentence).not.toMatch(marked('.'))
  expect(comma.map((sentence) => sentence.replaceAll(/(?<=\d),(?=\d)/g, '.'))).toEqual(stop)
  return comma.some((sentence) => marked(',').test(sentence))
}

/** What a rule says is its source's, whoever reads it. */
function withoutTheRules(sentence: string, pack: RulePack): string {
  const said = (says: string) => [says, `${says.charAt(0).toLowerCase()}${says.slice(1)}`]
  return pack.rules
    .flatMap(({ says, readings = [] }) => [says, ...readings.map((one) => one.says)].flatMap(said))
    .reduce((left, says) => left.replace(says, ''), sentence)
}

const said = ({ verdicts }: Check) =>
  Object.values(verdicts).flatMap(({ findings }) => findings.map(({ what, missing = '' }) => what + missing))

test('what the rules find', () => {
  const found = goldenCases.map(({ region, ...golden }) => {
    const pack = packs.get(region)
    if (!pack) throw new Error(region)
    return sameButForTheMark((decimalMark) =>
      judge(pack, { ...golden, decimalMark }).findings.map(({ what }) => withoutTheRules(what, pack)),
    )
  })
  expect(found).toContain(true)
})

test('what the six verdicts find, and what would help', () => {
  const pack = packs.get('AU-NSW')
  if (!pack) throw new Error('AU-NSW')
  const found: boolean[] = []
  fc.assert(
    fc.property(
      completePot,
      arbitraryTrip(pack),
      fc.constantFrom(...unitSystems),
      fc.double({ min: 0.1, max: 2.5, noNaN: true }),
      (pot, trip, units, mps) => {
        const water = {
          ...{ format: 'potwright/water' as const, version: 1 as const, id: 'here', name: 'Here' },
          ...{ latitudeDeg: -33, longitudeDeg: 151, depthM: 8.25, bottom: 'sand' as const },
          current: { source: 'fixed' as const, mps },
        }
        const setting = { materials: builtInMaterials, coefficients: defaultCoefficients, pot, trip }
        found.push(
          sameButForTheMark((decimalMark) => {
            const locale = { units, decimalMark }
            return said(fullCheck({ ...setting, water, pack, locale })).map((text) =>
              withoutTheRules(text, pack),
            )
          }),
        )
      },
    ),
    { numRuns: 40 },
  )
  expect(found).toContain(true)
  expect(
    sameButForTheMark((decimalMark) =>
      singleChanges({
        pot: standard,
        trip,
        materials: builtInMaterials,
        coefficients: defaultCoefficients,
        conditions: { ...channel, surfaceCurrentMps: 0.85 },
        locale: { units: 'imperial', decimalMark },
      }).map(({ what }) => what),
    ),
  ).toBe(true)
})

test('what contradicts itself in a design, and what it is made of', () => {
  const found: boolean[] = []
  fc.assert(
    fc.property(completePot, fc.constantFrom(...unitSystems), (pot, units) => {
      found.push(
        sameButForTheMark((decimalMark) => {
          const locale = { units, decimalMark }
          return [
            ...consistency(pot, builtInMaterials, locale).map(({ message }) => message),
            ...billOfMaterials(pot, builtInMaterials, locale).map(({ what }) => what),
          ]
        }),
      )
    }),
  )
  expect(found).toContain(true)
})

test('how parts wear', () => {
  const found: boolean[] = []
  const amount = (max: number) => fc.double({ min: 0, max, noNaN: true })
  fc.assert(
    fc.property(
      fc.constantFrom(...partKinds),
      fc.constantFrom('PP', 'PE', 'cotton', 'steel-galvanised', 'wire-coated'),
      fc.record({ ageMonths: amount(60), immersedDays: amount(700), hauls: fc.nat(400) }),
      fc.option(amount(20), { nil: undefined }),
      (kind, material, use, diameterLossPct) => {
        const now = { ...use, ashoreDays: { sun: 30, shade: 0, indoors: 0, unstated: 0 } }
        const inspections = diameterLossPct === undefined ? [] : [{ at: now, diameterLossPct }]
        found.push(
          sameButForTheMark((decimalMark) => {
            const part = { kind, material, diameterMm: 8.5, now, inspections }
            const context = { sheet: wearAssumptions, aheadMonths: 6, ownFailures: 2, decimalMark }
            const life = partLife(part, context)
            return [
              life.reason,
              ...(life.remainingMonths ? [monthsSaid(life.remainingMonths, decimalMark)] : []),
            ]
          }),
        )
      },
    ),
  )
  expect(found).toContain(true)
})

test('whether a measured crab is kept', () => {
  const found = [...packs.values()].flatMap((pack) =>
    gaugeEntries(pack).map((entry) =>
      sameButForTheMark((decimalMark) =>
        [20, 120, 300].map((mm) => gaugeVerdict(entry, mm, { sex: 'male' }, decimalMark).says),
      ),
    ),
  )
  expect(found).toContain(true)
})
