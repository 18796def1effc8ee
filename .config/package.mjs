import { Arch, build, Platform } from 'electron-builder'
import { execFileSync } from 'node:child_process'
import { statSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { runnerImport } from 'vite'

/*
 * `npm run package`: builds the program and makes the packages of this machine's system, or of those named:
 * `npm run package -- linux win`. Each is made on its own, so that one that cannot be made does not keep back the
 * others; what was not made is said with its reason, and the run then ends with 1.
 */

const root = fileURLToPath(new URL('..', import.meta.url))
const systems = { linux: Platform.LINUX, win: Platform.WINDOWS, mac: Platform.MAC }
const here = { linux: 'linux', win32: 'win', darwin: 'mac' }[process.platform]
const asked = process.argv.length > 2 ? process.argv.slice(2) : [here]

const unknown = asked.filter((name) => !(name in systems))
if (unknown.length > 0) {
  process.stderr.write(
    `Packages are made for ${Object.keys(systems).join(', ')}; not for ${unknown.join(', ')}.\n`,
  )
  process.exit(2)
}

const { module } = await runnerImport(join(root, '.config/packages.ts'))
execFileSync(process.execPath, [join(root, 'node_modules/electron-vite/bin/electron-vite.js'), 'build'], {
  cwd: root,
  stdio: 'inherit',
})

const made = []
/** What was not made, by its reason. */
const missed = new Map()
const noNet = /ENOTFOUND|ECONNREFUSED|ECONNRESET|ETIMEDOUT|EAI_AGAIN|fetch failed/
/** Why Electron cannot be fetched, once that is known: each try takes the better part of a minute. */
let cutOff
for (const system of asked) for (const wanted of targets(system)) await make(system, wanted)

for (const file of made)
  process.stdout.write(`Made: ${relative(root, file)}, ${(statSync(file).size / 2 ** 20).toFixed(1)} MB\n`)
for (const [reason, names] of missed) process.stderr.write(`Not made: ${names.join(', ')}.\n  ${reason}\n`)
process.exitCode = missed.size > 0 ? 1 : 0

function targets(system) {
  return module.packages[system].target.flatMap(({ target, arch }) =>
    arch.map((one) => ({ target, arch: one })),
  )
}

async function make(system, { target, arch }) {
  const name = `${target} for ${system} ${arch}`
  const miss = (reason) => missed.set(reason, [...(missed.get(reason) ?? []), name])
  // A disk image of macOS and its signature need a Mac; saying so now spares a long wait for a failure.
  if (system === 'mac' && here !== 'mac') return miss('It has to be made on a Mac.')
  if (cutOff) return miss(cutOff)
  let packed = false
  try {
    made.push(
      ...(await build({
        projectDir: root,
        targets: systems[system].createTarget([target], Arch[arch]),
        // The builder writes into what it is given.
        config: { ...structuredClone(module.packages), afterPack: () => void (packed = true) },
      })),
    )
  } catch (error) {
    const [line = ''] = String(error?.message ?? error).split('\n')
    if (!noNet.test(line)) return miss(line)
    // Each tool is fetched on its own, so one that is missing keeps back its own packages alone.
    if (packed) return miss(fetchedOnce('The tool that binds it', 'ELECTRON_BUILDER_BINARIES_MIRROR', line))
    cutOff = fetchedOnce('Electron', 'ELECTRON_MIRROR', line)
    miss(cutOff)
  }
}

function fetchedOnce(what, mirror, trouble) {
  return `${what} comes from the net, once, and could not be fetched (${trouble}). ${mirror} names another place.`
}
