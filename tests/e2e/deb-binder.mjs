#!/usr/bin/env node
import { execFileSync } from 'node:child_process'
import { chmodSync, cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { parseArgs } from 'node:util'

/*
 * Stands in for fpm, which electron-builder fetches to bind a deb and which Debian does not carry: takes the same
 * arguments, lays the files out as they say, and has Debian's dpkg-deb bind them. For the tests alone: what the
 * deb of a release holds and asks for can be read where fpm cannot be had. Nothing is compressed, to save the time.
 */

const text = { type: 'string' }
const texts = { type: 'string', multiple: true, default: [] }
const { values: said, positionals: laidOut } = parseArgs({
  allowPositionals: true,
  options: {
    ...{ source: { ...text, short: 's' }, target: { ...text, short: 't' }, force: { type: 'boolean' } },
    ...{ depends: { ...texts, short: 'd' }, 'deb-recommends': texts, 'deb-compression': text },
    ...{ name: text, version: text, architecture: text, maintainer: text, vendor: text, url: text },
    ...{ license: text, description: text, 'deb-priority': text, package: text },
    ...{ 'after-install': text, 'after-remove': text },
  },
})

const tree = mkdtempSync(join(tmpdir(), 'potwright-deb-'))
chmodSync(tree, 0o755)
for (const pair of laidOut) {
  const [from, to] = pair.split('=')
  mkdirSync(dirname(join(tree, to)), { recursive: true })
  cpSync(from, join(tree, to), { recursive: true, verbatimSymlinks: true })
}
const size = Number(execFileSync('du', ['-sk', tree], { encoding: 'utf8' }).split('\t')[0])
const fields = {
  Package: said.name,
  Version: said.version,
  Architecture: said.architecture,
  Maintainer: said.maintainer,
  'Installed-Size': size,
  Depends: said.depends.join(', '),
  Recommends: said['deb-recommends'].join(', '),
  Section: 'default',
  Priority: said['deb-priority'],
  Homepage: said.url,
  Description: said.description.replaceAll('\n\n', '\n .\n'),
}
const control = join(tree, 'DEBIAN')
mkdirSync(control)
chmodSync(control, 0o755)
writeFileSync(
  join(control, 'control'),
  Object.entries(fields)
    .filter(([, value]) => value)
    .map(([field, value]) => `${field}: ${value}\n`)
    .join(''),
)
for (const [script, file] of [
  [said['after-install'], join(control, 'postinst')],
  [said['after-remove'], join(control, 'postrm')],
]) {
  cpSync(script, file)
  chmodSync(file, 0o755)
}
execFileSync('dpkg-deb', ['--root-owner-group', '-Znone', '--build', tree, said.package])
rmSync(tree, { recursive: true })
