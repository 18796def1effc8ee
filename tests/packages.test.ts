import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import about from '../package.json'
import { packages } from '../.config/packages'

/* What is handed to people: locked down, complete, and with an icon of our own. */

const root = fileURLToPath(new URL('..', import.meta.url))

test('every switch that would let the packed program run other code is off, every safeguard on', () => {
  expect(packages.electronFuses).toEqual({
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    grantFileProtocolExtraPrivileges: false,
    enableCookieEncryption: true,
  })
  expect(packages.asar).toBe(true)
})

test('a package holds what was built and no modules', () => {
  expect(packages.files).toEqual(['out/**', 'package.json', 'LICENSE'])
  expect(packages.npmRebuild).toBe(false)
  expect(about).not.toHaveProperty('dependencies')
  expect(about.main).toMatch(/^out\//)
})

test('nothing is published and no update is looked for', () => {
  expect(packages.publish).toBeNull()
})

test.each([
  ['win', { nsis: ['x64', 'arm64'] }],
  ['mac', { dmg: ['x64', 'arm64'], zip: ['x64', 'arm64'] }],
  ['linux', { AppImage: ['x64', 'arm64'], deb: ['x64', 'arm64'] }],
] as const)('%s is served on both kinds of processor', (system, expected) => {
  const targets = [packages[system]?.target ?? []].flat()
  const listed = targets.map((one) => (typeof one === 'string' ? [one, []] : [one.target, one.arch]))
  expect(Object.fromEntries(listed)).toEqual(expected)
})

test('Windows is not handed every .json, and macOS asks the user', () => {
  expect(packages.win).not.toHaveProperty('fileAssociations')
  expect(packages.mac?.fileAssociations).toMatchObject([{ ext: 'json', rank: 'Alternate' }])
  expect(packages.linux?.fileAssociations).toMatchObject([{ ext: 'pot.json' }, { ext: 'water.json' }])
})

test('the AppImage keeps its sandbox and needs no library from outside', () => {
  // The first of the builder's toolsets starts the program with --no-sandbox, and through libfuse2.
  expect(packages.toolsets?.appimage).toMatch(/^1\./)
})

describe('icons', () => {
  const bytes = (path: string) => readFileSync(join(root, path))

  test.each([16, 24, 32, 48, 64, 128, 256, 512, 1024])('%i pixels', (size) => {
    const { width, height } = pngSize(bytes(`assets/icons/${size}x${size}.png`))
    expect({ width, height }).toEqual({ width: size, height: size })
  })

  test('the file for Windows points at whole pictures up to 256 pixels', () => {
    const ico = bytes('assets/icons/icon.ico')
    const found = Array.from({ length: ico.readUInt16LE(4) }, (_, index) => {
      const entry = 6 + 16 * index
      const at = ico.readUInt32LE(entry + 12)
      return {
        said: ico.readUInt8(entry) || 256,
        ...pngSize(ico.subarray(at)),
        end: at + ico.readUInt32LE(entry + 8),
      }
    })
    expect(found.map(({ said }) => said)).toEqual([16, 24, 32, 48, 64, 128, 256])
    for (const { said, width, height } of found) expect([width, height]).toEqual([said, said])
    expect(found.at(-1)?.end).toBe(ico.length)
  })

  test('the file for macOS is of the length it says, part by part', () => {
    const icns = bytes('assets/icons/icon.icns')
    expect(icns.toString('latin1', 0, 4)).toBe('icns')
    expect(icns.readUInt32BE(4)).toBe(icns.length)
    const widths: number[] = []
    for (let at = 8; at < icns.length; at += icns.readUInt32BE(at + 4))
      widths.push(pngSize(icns.subarray(at + 8)).width)
    expect(widths).toEqual([32, 64, 128, 256, 256, 512, 512, 1024])
  })

  test.each([packages.win?.icon, packages.mac?.icon, packages.linux?.icon])('%s is there', (icon) => {
    expect(existsSync(join(root, String(icon)))).toBe(true)
  })
})

/** Width and height stand at fixed places of a PNG's first chunk. */
function pngSize(png: Buffer) {
  expect(png.toString('latin1', 1, 4)).toBe('PNG')
  return { width: png.readUInt32BE(16), height: png.readUInt32BE(20) }
}
