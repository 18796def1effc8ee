import { listPackage } from '@electron/asar'
import { FuseV1Options, getCurrentFuseWire } from '@electron/fuses'
import { Arch, build, Platform } from 'electron-builder'
import { execFileSync, spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { copyFile, cp, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { chromium } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import about from '../../package.json'
import { packages } from '../../.config/packages'
import { ask } from './ask'
import { fetchedRuntime } from './electron-runtime.mjs'

/*
 * The program packed as for people, though with the runtime of the tests in place of the one that is shipped, and
 * bound into a deb by Debian's own tool: what is made here is thrown away, and is never a release.
 */

const runtime = fetchedRuntime()
const root = fileURLToPath(new URL('../..', import.meta.url))

describe.skipIf(runtime === undefined)('the packed program', () => {
  let folder = ''
  const packed = (name: string) => join(folder, 'linux-unpacked', name)
  const installed = (name: string) => join(folder, 'installed', name)

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'potwright-packed-'))
    vi.stubEnv('CUSTOM_FPM_PATH', join(root, 'tests/e2e/deb-binder.mjs'))
    const made = await build({
      projectDir: root,
      targets: Platform.LINUX.createTarget(['deb'], Arch.x64),
      config: {
        ...structuredClone(packages),
        electronDist: dirname(runtime ?? ''),
        directories: { output: folder, buildResources: 'assets/icons' },
        // Left behind by the runtime of the tests; a packed program has its archive alone.
        afterPack: async ({ appOutDir }) => {
          for (const name of ['resources/app', 'browser_v8_context_snapshot.bin'])
            await rm(join(appOutDir, name), { recursive: true, force: true })
        },
      },
    })
    execFileSync('dpkg-deb', ['--raw-extract', made[0] ?? '', join(folder, 'installed')])
  }, 120_000)
  afterAll(async () => {
    vi.unstubAllEnvs()
    await rm(folder, { recursive: true, force: true })
  })

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

  test('the deb holds the program, its licences and its picture in every size', async () => {
    const folders = await readdir(installed('usr/share/icons/hicolor'))
    expect(folders.toSorted()).toEqual(
      [16, 24, 32, 48, 64, 128, 256, 512, 1024].map((size) => `${size}x${size}`).toSorted(),
    )
    expect(await readFile(installed('usr/share/doc/potwright/copyright'), 'utf8')).toMatch(/^MIT License/)
    for (const name of ['potwright', 'resources/app.asar', 'LICENSE.electron.txt', 'LICENSES.chromium.html'])
      expect((await stat(installed(`opt/Potwright/${name}`))).size).toBeGreaterThan(0)
  })

  test('the deb asks for what a bare Debian lacks', async () => {
    const control = await readFile(installed('DEBIAN/control'), 'utf8')
    expect(control).toContain(`\nVersion: ${about.version}\n`)
    const wanted = /^Depends: (.*)$/m.exec(control)?.[1]?.split(', ')
    // Installed on Debian 12 with nothing but its base, these came with nothing else; the program is linked with all
    // but the first, and opens that one to reach the screen.
    expect(wanted).toEqual(
      expect.arrayContaining([
        'libx11-xcb1',
        'libgbm1',
        'libasound2t64 | libasound2',
        'libgtk-3-0',
        'libnss3',
      ]),
    )
  })

  test('the desktop starts it in its sandbox, knows its window, and gives it pots and waters', async () => {
    const entry = installed('usr/share/applications/potwright.desktop')
    execFileSync('desktop-file-validate', [entry])
    const text = await readFile(entry, 'utf8')
    expect(text).toMatch(/^Exec=\/opt\/Potwright\/potwright %U$/m)
    expect(text).toMatch(/^StartupWMClass=potwright$/m)

    // What the installed file says is read together with what the system brings, as after an installation.
    const data = join(folder, 'share')
    await cp('/usr/share/mime/packages', join(data, 'mime/packages'), { recursive: true })
    await cp(installed('usr/share/mime/packages'), join(data, 'mime/packages'), { recursive: true })
    execFileSync('update-mime-database', [join(data, 'mime')], { stdio: 'ignore' })
    const kindOf = async (name: string) => {
      await writeFile(join(folder, name), '{}')
      const said = execFileSync('gio', ['info', '-a', 'standard::content-type', join(folder, name)], {
        env: { ...process.env, XDG_DATA_DIRS: data, XDG_DATA_HOME: join(folder, 'nothing') },
        encoding: 'utf8',
      })
      return /content-type: (\S+)/.exec(said)?.[1]
    }
    expect(text).toContain(`${await kindOf('a.pot.json')};${await kindOf('a.water.json')};`)
    expect(await kindOf('a.json')).toBe('application/json')
  })

  test('runs no code named on its command line', () => {
    const ran = spawnSync(packed('potwright'), ['--version'], {
      env: { ...process.env, ELECTRON_RUN_AS_NODE: '1', POTWRIGHT_HOME: join(folder, 'home') },
      timeout: 4000,
      encoding: 'utf8',
    })
    expect(ran.stdout).not.toMatch(/^v\d+\./)
  })

  test('starts out of its archive, opens what it was handed, and says what it is and what it is built from', async () => {
    const document = join(folder, 'from a friend.pot.json')
    await copyFile(join(root, 'tests/fixtures/heavy-channel.pot.json'), document)
    const flags = ['--no-sandbox', '--use-angle=swiftshader', '--remote-debugging-port=0']
    // Desktops hand a document over by its address.
    const program = spawn(packed('potwright'), [...flags, pathToFileURL(document).href], {
      env: { ...process.env, POTWRIGHT_HOME: '', XDG_CONFIG_HOME: join(folder, 'config') },
      stdio: ['ignore', 'ignore', 'pipe'],
    })
    const ended = once(program, 'exit')
    try {
      const browser = await chromium.connectOverCDP(await debuggerOf(program.stderr))
      const [context] = browser.contexts()
      const page = context?.pages()[0] ?? (await context?.waitForEvent('page'))
      if (page === undefined) throw new Error('the packed program opened no window')
      await page.waitForURL(/^app:/)
      await expect
        .poll(() => page.getByLabel('Name of the design').inputValue(), { timeout: 60_000 })
        .toBe('Channel heavy 3')
      expect(await readdir(join(folder, 'config/potwright/data/pots'))).toEqual(['heavy-channel.pot.json'])

      await page.goto('app://main/index.html#/workshop/about')
      await page.getByRole('heading', { name: `Potwright ${about.version}` }).waitFor()
      await page.getByText('Desktop', { exact: true }).waitFor()
      expect(await ask(page, 'app:licences', {})).toMatchObject({
        value: expect.arrayContaining([expect.objectContaining({ name: 'three', licence: 'MIT' })]),
      })
      await browser.close()
    } finally {
      program.kill('SIGKILL')
      await ended
    }
  }, 120_000)
})

/** Where the program says it listens. */
async function debuggerOf(lines: NodeJS.ReadableStream): Promise<string> {
  for await (const line of createInterface({ input: lines })) {
    const found = /^DevTools listening on (\S+)/.exec(line)?.[1]
    if (found !== undefined) return found
  }
  throw new Error('the packed program ended without a word')
}
