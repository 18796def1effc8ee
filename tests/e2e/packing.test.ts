import { listPackage } from '@electron/asar'
import { FuseV1Options, getCurrentFuseWire } from '@electron/fuses'
import { Arch, build, Platform } from 'electron-builder'
import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { packages } from '../../.config/packages'
import { fetchedRuntime } from './electron-runtime.mjs'

/* The program packed as for people, though with the runtime of the tests in place of the one that is shipped. */

const runtime = fetchedRuntime()

describe.skipIf(runtime === undefined)('the packed program', () => {
  let folder = ''
  const packed = (name: string) => join(folder, 'linux-unpacked', name)

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'potwright-packed-'))
    await build({
      projectDir: fileURLToPath(new URL('../..', import.meta.url)),
      targets: Platform.LINUX.createTarget(['dir'], Arch.x64),
      config: {
        ...structuredClone(packages),
        electronDist: dirname(runtime ?? ''),
        directories: { output: folder, buildResources: 'assets/icons' },
      },
    })
    // Left behind by the runtime of the tests; a packed program has its archive alone.
    await rm(packed('resources/app'), { recursive: true, force: true })
  }, 120_000)
  afterAll(() => rm(folder, { recursive: true, force: true }))

  test('holds what was built and not one module', () => {
    const files = listPackage(packed('resources/app.asar'), { isPack: false })
    expect(files).toEqual(
      expect.arrayContaining(['/package.json', '/LICENSE', '/out/main/index.js', '/out/preload/preload.cjs']),
    )
    expect(files.filter((file) => !/^\/(out(\/|$)|package\.json$|LICENSE$)/.test(file))).toEqual([])
  })

  test('has its switches set in the program itself', async () => {
    const fuses = await getCurrentFuseWire(packed('potwright'))
    const isOn = (fuse: FuseV1Options) => String.fromCharCode(Number(fuses[fuse])) === '1'
    expect(isOn(FuseV1Options.RunAsNode)).toBe(false)
    expect(isOn(FuseV1Options.EnableNodeOptionsEnvironmentVariable)).toBe(false)
    expect(isOn(FuseV1Options.EnableNodeCliInspectArguments)).toBe(false)
    expect(isOn(FuseV1Options.GrantFileProtocolExtraPrivileges)).toBe(false)
    expect(isOn(FuseV1Options.OnlyLoadAppFromAsar)).toBe(true)
    expect(isOn(FuseV1Options.EnableEmbeddedAsarIntegrityValidation)).toBe(true)
    expect(isOn(FuseV1Options.EnableCookieEncryption)).toBe(true)
  })

  test('starts out of its archive, and runs no code named on its command line', async () => {
    const ran = spawnSync(packed('potwright'), ['--version'], {
      env: { ...process.env, ELECTRON_RUN_AS_NODE: '1', POTWRIGHT_HOME: join(folder, 'home') },
      timeout: 4000,
      encoding: 'utf8',
    })
    expect(ran.stdout).not.toMatch(/^v\d+\./)

    const flags = ['--no-sandbox', '--use-angle=swiftshader', '--remote-debugging-port=0']
    const program = spawn(packed('potwright'), [...flags, '--data', join(folder, 'data')], {
      env: { ...process.env, POTWRIGHT_HOME: join(folder, 'home') },
      stdio: ['ignore', 'ignore', 'pipe'],
    })
    const ended = once(program, 'exit')
    try {
      const { host } = new URL(await debuggerOf(program.stderr))
      await expect
        .poll(() => addressesOpen(host), { timeout: 30_000 })
        .toContainEqual(expect.stringMatching(/^app:/))
    } finally {
      program.kill('SIGKILL')
      await ended
    }
  })
})

/** Addresses of the pages that the program has open, as it lists them itself. */
async function addressesOpen(host: string): Promise<string[]> {
  const pages = (await (await fetch(`http://${host}/json/list`)).json()) as { url: string }[]
  return pages.map((page) => page.url)
}

/** Where the program says it listens. */
async function debuggerOf(lines: NodeJS.ReadableStream): Promise<string> {
  for await (const line of createInterface({ input: lines })) {
    const found = /^DevTools listening on (\S+)/.exec(line)?.[1]
    if (found !== undefined) return found
  }
  throw new Error('the packed program ended without a word')
}
