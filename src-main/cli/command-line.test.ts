import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import * as v from 'valibot'
import { describe, expect, test } from 'vitest'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { CheckSchema, type Check, type Spread } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import { runInMemory } from './memory-terminal'

const home = temporaryFolder()
const fixture = (name: string) => fileURLToPath(new URL(`../../tests/fixtures/${name}`, import.meta.url))
const reference = (name: string) => fileURLToPath(new URL(`../../tests/reference/${name}`, import.meta.url))
const pot = fixture('main-channel.pot.json')
const place = ['--water', fixture('heron-narrows.water.json'), '--trip', fixture('december.trip.json')]
const run = (args: readonly string[], input = '') => runInMemory(args, home(), input)

async function changedPot(change: (pot: Pot) => Pot): Promise<string> {
  return JSON.stringify(change(JSON.parse(await readFile(pot, 'utf8')) as Pot))
}

async function checked(input: string, ...more: string[]): Promise<Check> {
  const { out, error } = await run(['check', '-', ...place, '--json', ...more], input)
  expect(error).toBe('')
  return v.parse(CheckSchema, JSON.parse(out))
}

const slides = (check: Check) => check.verdicts.holdsBottom.figures?.['slideCurrentMps'] as Spread

describe('check', () => {
  test('gives the published form, and an exit code by the worst verdict', async () => {
    const { code, out } = await run(['check', pot, ...place, '--json'])
    const check = v.parse(CheckSchema, JSON.parse(out))
    expect(code).toBe(check.overall === 'holds' ? 0 : 1)
    expect(slides(check).low).toBeLessThan(slides(check).high)
  })

  test('a heavier ring raises the current at which it slides; rope of twice the diameter lowers it', async () => {
    const asItIs = slides(await checked(await readFile(pot, 'utf8')))
    const heavier = await changedPot((one) => ({
      ...one,
      frame: (one.frame ?? []).map((part) =>
        part.role === 'base-ring' ? { ...part, barDiameterMm: 16 } : part,
      ),
    }))
    const thicker = await changedPot((one) => ({
      ...one,
      ...(one.rope && { rope: { ...one.rope, diameterMm: 16 } }),
    }))
    expect(slides(await checked(heavier)).mid).toBeGreaterThan(asItIs.mid)
    expect(slides(await checked(thicker)).mid).toBeLessThan(asItIs.mid)
  })

  test('one pot breaks rules of one region that it meets in another', async () => {
    const text = await readFile(pot, 'utf8')
    const broken = (check: Check) => check.verdicts.legal.findings.filter(({ state }) => state === 'fails')
    expect(broken(await checked(text))).toEqual([])
    const elsewhere = broken(await checked(text, '--region', 'AU-NSW'))
    expect(elsewhere.map(({ rule }) => rule)).toContain('nsw-trap-mesh')
    for (const finding of elsewhere) expect(finding.source?.title).toBeTruthy()
  })

  test('without water and trip it cannot tell, and never says that it holds', async () => {
    const { code, out } = await run(['check', pot, '--json'])
    const { verdicts } = v.parse(CheckSchema, JSON.parse(out))
    expect(code).toBe(1)
    expect([verdicts.legal.state, verdicts.holdsBottom.state]).toEqual(['cannot-tell', 'cannot-tell'])
    expect(verdicts.holdsBottom.findings[0]?.missing).toBeTruthy()
  })

  test('a size that is none, an entrance too large for its wall and a region without rules are refused by field', async () => {
    const refused = async (change: (pot: Pot) => unknown, ...more: string[]) => {
      const text = JSON.stringify(change(JSON.parse(await readFile(pot, 'utf8')) as Pot))
      const { code, out, error } = await run(['check', '-', ...place, ...more], text)
      expect([code, out]).toEqual([2, ''])
      return error
    }
    const negative = (one: Pot) => ({ ...one, body: { ...one.body, heightMm: -320 } })
    expect(await refused(negative)).toMatch(/body\.heightMm must be at least 10\..*\[body\.heightMm\]/)
    const noNumber = (one: Pot) => ({ ...one, rope: { ...one.rope, lengthM: Number.NaN } })
    expect(await refused(noNumber)).toMatch(/rope\.lengthM must be a number\..*\[rope\.lengthM\]/)
    const wide = (one: Pot) => ({
      ...one,
      entrances: one.entrances?.map((entrance) => ({ ...entrance, widthMm: 1900 })),
    })
    expect(await refused(wide)).toMatch(/1900 mm wide.*\[entrances\.0\.widthMm\]/)
    expect(await refused((one) => one, '--region', 'BR-RS')).toMatch(/no rules for BR-RS.*\[region\]/)
    expect(await refused(() => ({ format: 'somebody/else' }))).toContain('[format]')
    const { code, error } = await run(['check', '-'], '{"format": "potwright/pot", "lengthM": NaN}')
    expect([code, error]).toEqual([2, expect.stringContaining('not readable')])
  })

  test('a float that cannot carry its rope and a rope shorter than the depth fail, and say by how much', async () => {
    const sunk = await run(['check', fixture('odd-sunk-float.pot.json'), ...place])
    expect(sunk.code).toBe(1)
    expect(sunk.error).toContain('[float.diameterMm]')
    const short = await checked(await readFile(fixture('odd-short-rope.pot.json'), 'utf8'))
    expect(short.verdicts.floatShows.findings).toContainEqual(
      expect.objectContaining({ rule: 'float:rope-length', state: 'fails', part: 'rope', actual: 6 }),
    )
  })

  test('text names each verdict and what does not hold, in the units asked for', async () => {
    const metric = await run(['check', pot, ...place])
    for (const name of ['Legal', 'Holds bottom', 'Float shows', 'Lifts', 'Fishes', 'Stows'])
      expect(metric.out).toContain(name)
    expect(metric.out).toMatch(/ m\/s/)
    const imperial = await run(['check', pot, ...place, '--units', 'imperial'])
    expect(imperial.out).toMatch(/ (kn|ft)/)
    expect(imperial.out).not.toMatch(/\d m\/s/)
  })

  test.each<[string, (text: string) => string, string | undefined]>([
    ['a foreign file', () => '{"format":"other"}', ''],
    ['no JSON', () => 'hello', undefined],
    ['nothing', () => '', undefined],
    [
      'a negative size',
      (text) => text.replace('"barDiameterMm": 10', '"barDiameterMm": -10'),
      'frame.0.barDiameterMm',
    ],
    ['an unknown field', (text) => text.replace('"catchKg"', '"catchTonnes"'), 'catchTonnes'],
    ['NaN', (text) => text.replace('"lengthM": 18', '"lengthM": NaN'), undefined],
    ['a newer version', (text) => text.replace('"version": 1', '"version": 2'), 'version'],
  ])(
    '%s is refused with exit code 2, its path on standard error, and nothing written',
    async (_, spoil, path) => {
      const { code, out, error } = await run(['check', '-'], spoil(await readFile(pot, 'utf8')))
      expect(code).toBe(2)
      expect(out).toBe('')
      expect(error).toMatch(/^potwright check: -: /)
      if (path) expect(error).toContain(`[${path}]`)
      expect(await readdir(home())).toEqual([])
    },
  )

  test.each([
    [['check'], /takes one pot/],
    [['check', pot, pot], /takes one pot/],
    [['check', 'gone.pot.json'], /could not be read/],
    [['check', pot, '--colour', 'red'], /--colour/],
    [['check', pot, '--units', 'furlongs'], /\[units\]/],
    [['check', pot, '--region', 'ZZ'], /no rules for ZZ/],
    [['sail'], /no command “sail”/],
    [['serve', '--port', 'x'], /\[port\]/],
    [['regions', 'ZZ'], /no rules for ZZ/],
    [['verify'], /takes one file/],
    [['calc', 'no.such-model', '{}'], /no model/],
    [['calc', 'netting.solidity-square', '[]'], /in braces/],
    [['calc', 'netting.solidity-square', '{}'], /\[inputs\]/],
  ])('%j is refused with exit code 2', async (args, message) => {
    const { code, out, error } = await run(args)
    expect([code, out]).toEqual([2, ''])
    expect(error).toMatch(message)
  })

  test('the user’s own figures count, in check and in match alike', async () => {
    const mine = { low: 0.9, mid: 0.9, high: 0.9 } // sand that grips like gravel
    const data = ['--data', home()]
    const margins = async () => {
      const { out } = await run(['match', pot, ...place, '--days', '1', '--json', ...data])
      const { waters } = JSON.parse(out) as { waters: { cells: { marginMps: number }[] }[] }
      return waters[0]?.cells[0]?.marginMps ?? NaN
    }
    const text = await readFile(pot, 'utf8')
    const before = { slides: slides(await checked(text, ...data)).mid, margin: await margins() }
    await writeFile(
      join(home(), 'machine.json'),
      JSON.stringify({ format: 'potwright/machine', version: 1, id: 'm', name: 'Shed' }),
    )
    await mkdir(join(home(), 'settings'))
    await writeFile(
      join(home(), 'settings', 'm.json'),
      JSON.stringify({
        ...{ format: 'potwright/settings', version: 1 },
        coefficients: { frictionSand: mine },
      }),
    )
    expect(slides(await checked(text, ...data)).mid).toBeGreaterThan(before.slides)
    expect(await margins()).toBeGreaterThan(before.margin)
  })

  test('the user’s own materials count, and damaged ones are refused', async () => {
    const data = home()
    await writeFile(join(data, 'materials.json'), '{"format":"potwright/materials","version":1}')
    expect((await run(['check', pot, '--data', data])).code).toBe(1)
    await writeFile(
      join(data, 'materials.json'),
      '{"format":"potwright/materials","version":1,"solids":[{}]}',
    )
    const { code, error } = await run(['check', pot, '--data', data])
    expect(code).toBe(2)
    expect(error).toContain('[solids.0')
  })
})

describe('verify and calc', () => {
  test('all published values that ship come out', async () => {
    const files = ['check-values.json', 'fishing-and-wear-values.json'].map(reference)
    const { code, out } = await run(['verify', ...files, '--json'])
    const outcome = JSON.parse(out) as { passed: string[]; failed: unknown[]; unknown: unknown[] }
    expect([outcome.failed, outcome.unknown, code]).toEqual([[], [], 0])
    expect(outcome.passed.length).toBeGreaterThan(200)
  })

  test('a value that does not come out, and a model that is not there, are named with exit code 1', async () => {
    const vector = {
      id: 'a',
      model: 'netting.solidity-square',
      inputs: { twine_diameter_m: 0.003, bar_length_m: 0.05 },
      expected: 0.2,
      tolerance: 1e-6,
    }
    const unknown = { ...vector, id: 'b', model: 'no.such-model' }
    const { code, out } = await run(['verify', '-'], JSON.stringify([vector, unknown]))
    expect(code).toBe(1)
    expect(out).toMatch(/failed {3}a .*expected 0.2.*got 0.116/)
    expect(out).toMatch(/unknown {2}b: there is no model no.such-model/)
    expect((await run(['verify', '-'], '{"vectors":[{"id":1}]}')).code).toBe(2)
  })

  test('one model with one set of inputs, from the arguments or standard input', async () => {
    const inputs = '{"twine_diameter_m":0.003,"bar_length_m":0.05}'
    expect((await run(['calc', 'netting.solidity-square', inputs])).out).toBe('0.1164\n')
    expect(
      JSON.parse((await run(['calc', 'netting.solidity-square', '-', '--json'], inputs)).out),
    ).toMatchObject({
      value: expect.closeTo(0.1164, 9),
    })
    expect((await run(['calc'])).out).toContain('netting.solidity-square')
  })
})

describe('regions', () => {
  test('all, one, several side by side, and what is checked', async () => {
    expect((await run(['regions'])).out).toMatch(/US-WA.*checked/)
    expect((await run(['regions', 'US-WA'])).out).toContain('US-WA:cord-size')
    expect((await run(['regions', 'US-WA', 'AU-QLD'])).out).toMatch(/US-WA: .*\n {2}AU-QLD: /)
    expect((await run(['regions', 'US-WA', '--coverage'])).out).toMatch(/checked by the program \(\d+\)/)
    const listed = JSON.parse((await run(['regions', '--json'])).out) as { region: string }[]
    expect(listed.map(({ region }) => region)).toContain('AU-NSW')
    expect(JSON.parse((await run(['regions', 'US-WA', '--json'])).out)).toMatchObject({ region: 'US-WA' })
  })
})

test('help lists every command, and each says how it is used', async () => {
  const { code, out } = await run(['--help'])
  expect(code).toBe(0)
  for (const name of ['check', 'tide', 'regions', 'calc', 'verify', 'serve']) {
    expect(out).toContain(`\n  ${name}`)
    expect((await run([name, '--help'])).out).toContain(`potwright ${name}`)
  }
})
