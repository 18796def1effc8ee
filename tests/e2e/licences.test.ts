import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

/* Everything that was built in may be handed on, and is named. */

interface Entry {
  readonly name: string
  readonly licence: string
  readonly text?: string
}

const listed = (part: string): Entry[] =>
  JSON.parse(readFileSync(fileURLToPath(new URL(`../../out/${part}/licences.json`, import.meta.url)), 'utf8'))
const all = [...listed('main'), ...listed('renderer')]

/** Licences that let a program be handed on under its own, as long as they are named and their text goes along. */
const allowed = new Set([
  'MIT',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'Apache-2.0 AND BSL-1.0',
  'CC0-1.0',
  'Unlicense',
  'OFL-1.1',
])

// The package of an import of values; types leave nothing behind.
const imported = /^\s*import (?!type )(?:[^'\n]* from )?'((?:@[a-z][^/']*\/)?(?!@|\.|\/)[a-z][^/']*)/gm

test('every package built in is under a licence that allows it', () => {
  expect(
    all.filter(({ licence }) => !allowed.has(licence)).map(({ name, licence }) => [name, licence]),
  ).toEqual([])
})

test.each([
  ['main', 'lowdb'],
  ['main', 'valibot'],
  ['main', '@neaps/tide-database'],
  ['renderer', 'three'],
  ['renderer', 'svelte'],
  ['renderer', '@fontsource-variable/atkinson-hyperlegible-next'],
  ['renderer', 'world-atlas'],
  ['renderer', 'topojson-client'],
])('the %s part names %s', (part, name) => {
  expect(listed(part).map((entry) => entry.name)).toContain(name)
})

test('every package that the sources name is named among them', () => {
  const root = fileURLToPath(new URL('../..', import.meta.url))
  const named = ['shared', 'src-main', 'src-renderer'].flatMap((part) =>
    readdirSync(join(root, part), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|svelte)$/.test(file) && !/\.test\.ts$|electron-stand-in|open-test/.test(file))
      .flatMap((file) => [...readFileSync(join(root, part, file), 'utf8').matchAll(imported)])
      .map(([, name = '']) => name),
  )
  // Electron is the runtime itself and brings its own list; the rest of these is ours, or only builds and tests.
  const notBuiltIn =
    /^(@(shared|main|renderer|assets)\/|node:|virtual:|electron$|vite$|vitest$|fast-check$|odex$)/
  const needed = [...new Set(named)].filter((name) => !notBuiltIn.test(name))
  expect(needed.length).toBeGreaterThan(10)
  const known = new Set(all.map(({ name }) => name))
  expect(needed.filter((name) => !known.has(name))).toEqual([])
})

test('the licences that ask for their text carry it', () => {
  const asking = all.filter(({ licence }) => /^(Apache|BSD|OFL)/.test(licence))
  expect(asking.length).toBeGreaterThan(10)
  expect(asking.filter(({ text }) => text === undefined).map(({ name }) => name)).toEqual([])
})
