import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Plugin } from 'vite'

/** Writes `licences.json` beside a part of the build: every package it took in, with its licence and its text. */
export function licences(): Plugin {
  return {
    name: 'potwright-licences',
    apply: 'build',
    generateBundle() {
      const folders = new Set([...this.getModuleIds()].flatMap((id) => packageFolder(id) ?? []))
      const entries = [...folders].sort().map(licenceOf)
      this.emitFile({ type: 'asset', fileName: 'licences.json', source: JSON.stringify(entries) })
    },
  }
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
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying)/i.test(name))
  const path = file === undefined ? undefined : join(folder, file)
  return {
    name: about.name,
    version: about.version,
    licence: about.license ?? (path === undefined ? 'not stated' : 'see its text'),
    ...(path !== undefined ? { text: readFileSync(path, 'utf8') } : {}),
  }
}
