import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'

/* Who may import whom. Arrows point one way: the interface and the main side to shared, never to each other. */

const root = fileURLToPath(new URL('..', import.meta.url))

/** A folder of shared imports only those before it; rules, fishing and wear do not import each other. */
const order = [
  'units',
  'numerics',
  'schema',
  'physics',
  'design',
  'tides',
  'rules',
  'fishing',
  'wear',
  'journal',
  'verdicts',
  'match',
  'season',
  'contract',
]
const apart = new Set(['rules', 'fishing', 'wear'])

const forbidden = [
  { folder: 'shared', mayNot: /^(electron|svelte|three|lowdb|sirv|node:|@main|@renderer)/ },
  { folder: 'src-renderer', mayNot: /^(electron|lowdb|sirv|node:|@main)/ },
  { folder: 'src-main', mayNot: /^(svelte|three|@renderer)/ },
]

/** Folders of the main side that know neither Electron nor HTTP. */
const plain = ['storage', 'services', 'cli']

interface Import {
  readonly file: string
  readonly from: string
}

describe.each(forbidden)('$folder', ({ folder, mayNot }) => {
  test('imports only what it may', () => {
    expect(importsUnder(folder).filter(({ from }) => mayNot.test(from))).toEqual([])
  })

  test('reaches other folders by their alias, not by climbing', () => {
    const climbing = importsUnder(folder).filter(({ file, from }) => {
      const [top] = join(file, '..', from).split('/')
      return from.startsWith('.') && top !== folder && !from.endsWith('package.json')
    })
    expect(climbing).toEqual([])
  })
})

test('a folder of shared imports only those before it', () => {
  const backwards = importsUnder('shared').filter(({ file, from }) => {
    const here = file.split('/')[1] ?? ''
    const there = /^@shared\/([^/]+)/.exec(from)?.[1]
    if (there === undefined || there === here) return false
    const areSiblings = apart.has(here) && apart.has(there)
    return areSiblings || order.indexOf(there) > order.indexOf(here)
  })
  expect(backwards).toEqual([])
})

test('every folder of shared has its place in the order', () => {
  const folders = readdirSync(join(root, 'shared'), { withFileTypes: true })
  expect(
    folders.filter((entry) => entry.isDirectory() && !order.includes(entry.name)).map(({ name }) => name),
  ).toEqual([])
})

test('storage, services and commands know neither Electron nor HTTP', () => {
  const found = plain
    .flatMap((folder) => importsUnder(join('src-main', folder)))
    .filter(({ from }) => /^(electron|sirv|node:https?)$/.test(from))
  expect(found).toEqual([])
})

test('shared reads no clock and rolls no dice', () => {
  const impure = filesUnder('shared').filter((file) =>
    /\bDate\.now\(|\bnew Date\(\)|\bMath\.random\(|\bperformance\.now\(/.test(textOf(file)),
  )
  expect(impure).toEqual([])
})

test('the controls of the interface know nothing of what is kept, nor of the screens they stand on', () => {
  const found = importsUnder('src-renderer/ui').filter(
    ({ file, from }) =>
      from.startsWith('@renderer/') ||
      (from.startsWith('.') && !join(file, '..', from).startsWith(join('src-renderer', 'ui'))),
  )
  expect(found).toEqual([])
})

test('the preload imports types and the bridge of Electron alone', () => {
  const lines = textOf('src-main/preload.ts')
    .split('\n')
    .filter((line) => line.startsWith('import') && !line.startsWith('import type'))
  expect(lines).toEqual(["import { contextBridge, ipcRenderer } from 'electron'"])
})

test('the test sees imports at all', () => {
  expect(importsUnder('shared').length).toBeGreaterThan(100)
  expect(importsUnder('src-renderer').some(({ from }) => from.startsWith('@shared/'))).toBe(true)
})

function importsUnder(folder: string): Import[] {
  return filesUnder(folder).flatMap((file) =>
    [...textOf(file).matchAll(/(?:from|import\(|^import)\s*['"]([^'"]+)['"]/gm)].map(([, from = '']) => ({
      file,
      from,
    })),
  )
}

/** Sources, without tests: those may use what they test with. */
function filesUnder(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|svelte)$/.test(entry.name) && !/\.test\.ts$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length))
}

function textOf(file: string): string {
  return readFileSync(join(root, file), 'utf8')
}
