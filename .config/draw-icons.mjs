import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'

/*
 * `npm run icons`: draws the icons of the packages from `src-renderer/icon.svg`, at every size a desktop asks for,
 * and binds them into the two formats that hold several sizes, so that making a package needs no converter.
 */

const root = fileURLToPath(new URL('..', import.meta.url))
const folder = join(root, 'assets/icons')
const sizes = [16, 24, 32, 48, 64, 128, 256, 512, 1024]

/** Sizes by their name in an .icns file; those of 11 to 14 are the doubled ones of dense screens. */
const icnsParts = { ic11: 32, ic12: 64, ic07: 128, ic08: 256, ic13: 256, ic09: 512, ic14: 512, ic10: 1024 }

const pictures = await draw(readFileSync(join(root, 'src-renderer/icon.svg'), 'utf8'))
mkdirSync(folder, { recursive: true })
for (const [size, png] of pictures) writeFileSync(join(folder, `${size}x${size}.png`), png)
writeFileSync(join(folder, 'icon.ico'), ico([...pictures].filter(([size]) => size <= 256)))
writeFileSync(join(folder, 'icon.icns'), icns())
process.stdout.write(`${sizes.length} sizes drawn to assets/icons.\n`)

async function draw(svg) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: ['--no-sandbox'],
  })
  const page = await browser.newPage()
  await page.setContent(`<style>* { margin: 0 } svg { display: block; width: 100vw }</style>${svg}`)
  const drawn = new Map()
  for (const size of sizes) {
    await page.setViewportSize({ width: size, height: size })
    drawn.set(size, await page.screenshot({ omitBackground: true }))
  }
  await browser.close()
  return drawn
}

/** A directory of 16 bytes a picture, then the pictures as they are; a size of 256 is written as 0. */
function ico(entries) {
  const head = Buffer.alloc(6 + 16 * entries.length)
  head.writeUInt16LE(1, 2)
  head.writeUInt16LE(entries.length, 4)
  let at = head.length
  entries.forEach(([size, png], index) => {
    const entry = 6 + 16 * index
    head.writeUInt8(size % 256, entry)
    head.writeUInt8(size % 256, entry + 1)
    head.writeUInt16LE(1, entry + 4)
    head.writeUInt16LE(32, entry + 6)
    head.writeUInt32LE(png.length, entry + 8)
    head.writeUInt32LE(at, entry + 12)
    at += png.length
  })
  return Buffer.concat([head, ...entries.map(([, png]) => png)])
}

/** Each part is its name, its length with these eight bytes, and the picture. */
function icns() {
  const parts = Object.entries(icnsParts).map(([name, size]) => part(name, pictures.get(size)))
  return part('icns', Buffer.concat(parts))
}

function part(name, content) {
  const head = Buffer.alloc(8)
  head.write(name, 'latin1')
  head.writeUInt32BE(8 + content.length, 4)
  return Buffer.concat([head, content])
}
