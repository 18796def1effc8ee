import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import type { Plugin } from 'vite'

/**
 * Writes `licences.json` beside a part of the build: every package it took in, with its licence and its text.
 * Workers are bundles of their own, made before their page's, and tell what they took in to the same list.
 *
 * @param data packages whose data was taken in by way of a module made in the build
 */
export function licences(data: readonly string[] = []): { page: Plugin; workers: () => Plugin[] } {
  const require = createRequire(import.meta.url)
  const folders = new Set(data.map((name) => dirname(require.resolve(`${name}/package.json`))))
  const note = (ids: Iterable<string>) => {
    for (const folder of [...ids].flatMap((id) => packageFolder(id) ?? [])) folders.add(folder)
  }
  const worker: Plugin = {
    name: 'potwright-licences-of-workers',
    apply: 'build',
    generateBundle() {
      note(this.getModuleIds())
    },
  }
  const page: Plugin = {
    name: 'potwright-licences',
    apply: 'build',
    generateBundle() {
      note(this.getModuleIds())
      const entries = [...folders].sort().map(licenceOf)
      this.emitFile({ type: 'asset', fileName: 'licences.json', source: JSON.stringify(entries) })
    },
  }
  return { page, workers: () => [worker] }
}

/** The folder of the package that a module belongs to; the innermost, where packages are nested. */
function packageFolder(id: string): string | undefined {
  return /^\0?(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id.replaceAll('\\', '/'))?.[1]
}

function licenceOf(folder: string) {
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    name: string
    version: string
    license?: string
  }
  const files = readdirSync(folder).filter((name) => /^(licen[cs]e|copying|notice)/i.test(name))
  const text = files.map((file) => readFileSync(join(folder, file), 'utf8').trim()).join('\n\n')
  return {
    name: about.name,
    version: about.version,
    licence: about.license ?? nameOf(text),
    ...(text === '' ? {} : { text }),
  }
}

/** The licence by the words that no other has, for packages that name none. */
function nameOf(text: string): string {
  if (text.startsWith('MIT License')) return 'MIT'
  if (/Redistribution and use in source and binary forms/.test(text))
    return /Neither the name/i.test(text) ? 'BSD-3-Clause' : 'BSD-2-Clause'
  return 'not stated'
}
