import { describe, expect, test } from 'vitest'
import * as v from 'valibot'
import { PotSchema } from '@shared/schema/pot'
import { TripSchema } from '@shared/schema/trip'
import { WaterSchema } from '@shared/schema/water'
import { judge } from './judge'
import { readPacks } from './packs'

/*
 * Golden pots, one file a region: a pot that meets every rule that can be checked, and pots that break named ones.
 * Each case is the region's base with parts put in place; null takes a part out.
 */

const patch = v.record(v.string(), v.unknown())
const GoldenSchema = v.strictObject({
  base: v.strictObject({ pot: patch, trip: patch, water: v.optional(patch) }),
  cases: v.pipe(
    v.array(
      v.strictObject({
        name: v.string(),
        pot: v.optional(patch),
        trip: v.optional(patch),
        water: v.optional(patch),
        fails: v.array(v.string()),
        cannotTell: v.optional(v.array(v.string()), []),
        close: v.optional(v.array(v.string()), []),
      }),
    ),
    v.minLength(3),
  ),
})

const files = import.meta.glob<unknown>('../../tests/fixtures/golden/*.json', {
  eager: true,
  import: 'default',
})
const packs = readPacks()

describe.each(Object.entries(files))('%s', (path, raw) => {
  const region = path.replace(/^.*\/(.+)\.json$/, '$1')
  const golden = v.parse(GoldenSchema, raw)

  test.each(golden.cases)('$name', ({ pot, trip, water, fails, cannotTell, close }) => {
    const pack = packs.get(region)
    if (!pack) throw new Error(`no pack for ${region}`)
    const { findings } = judge(pack, {
      pot: v.parse(
        PotSchema,
        put({ format: 'potwright/pot', version: 1, id: 'golden', name: 'Golden' }, golden.base.pot, pot),
      ),
      trip: v.parse(
        TripSchema,
        put({ format: 'potwright/trip', version: 1, region }, golden.base.trip, trip),
      ),
      ...(golden.base.water || water
        ? {
            water: v.parse(
              WaterSchema,
              put(
                { format: 'potwright/water', version: 1, id: 'golden', name: 'Golden' },
                golden.base.water,
                water,
              ),
            ),
          }
        : {}),
    })
    const inState = (state: string) =>
      findings
        .filter((one) => one.state === state && !one.rule.endsWith(':not-found'))
        .map((one) => one.rule)
        .toSorted()
    expect({ fails: inState('fails'), cannotTell: inState('cannot-tell'), close: inState('close') }).toEqual({
      fails: fails.toSorted(),
      cannotTell: cannotTell.toSorted(),
      close: close.toSorted(),
    })
  })

  test('has a pot that meets every rule, and two that break some', () => {
    expect(golden.cases.some((one) => one.fails.length === 0 && one.cannotTell.length === 0)).toBe(true)
    expect(golden.cases.filter((one) => one.fails.length > 0).length).toBeGreaterThanOrEqual(2)
  })
})

test('every region has golden pots', () => {
  const covered = Object.keys(files).map((path) => path.replace(/^.*\/(.+)\.json$/, '$1'))
  expect([...packs.keys()].filter((region) => !covered.includes(region))).toEqual([])
})

function put(...layers: (Record<string, unknown> | undefined)[]): unknown {
  const merged = Object.assign({}, ...layers) as Record<string, unknown>
  return Object.fromEntries(Object.entries(merged).filter(([, value]) => value !== null))
}
