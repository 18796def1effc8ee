import '@renderer/ui/theme.css'
import { starterPots } from '@shared/design/starter-pots'
import type { PartName } from '@shared/schema/check'
import { PotSchema, type Pot } from '@shared/schema/pot'
import * as v from 'valibot'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { createPotScene, noPicture, pictureLost } from './create-pot-scene'
import type { PotScene, SceneModel, SceneOptions } from './scene-model'

const frame = () => new Promise((resolve) => requestAnimationFrame(resolve))

function starter(k: number): Pot {
  const pot = starterPots[k % starterPots.length]
  if (!pot) throw new Error('there is no starting shape')
  return pot
}

const modelOf = (pot: Pot, more: Partial<SceneModel> = {}): SceneModel => ({
  pot,
  mode: 'built',
  bottom: 'sand',
  crabWidthMm: 150,
  ...more,
})

let host: HTMLElement
let scene: PotScene | undefined
let picked: (PartName | undefined)[] = []

function open(more: Partial<SceneOptions> = {}): PotScene {
  scene = createPotScene(host, {
    reducedMotion: true,
    theme: 'light',
    lengthText: (metres) => `${String(Math.round(metres * 1000))} mm`,
    speedText: (speed) => `${String(speed)} m/s`,
    onPick: (part) => picked.push(part),
    ...more,
  })
  return scene
}

function addHost() {
  host = document.createElement('div')
  Object.assign(host.style, { position: 'relative', width: '160px', height: '120px' })
  document.body.append(host)
}

function removeHost() {
  scene?.dispose()
  scene = undefined
  host.remove()
}

function picture(): HTMLCanvasElement {
  const canvas = host.querySelector('canvas')
  if (!canvas) throw new Error('there is no picture')
  return canvas
}

/** The picture as text that is the same for the same picture. */
const pixels = async (view: PotScene) => new Uint8Array(await (await view.toPng(1)).arrayBuffer()).join()

/** Reads colours at shares of the picture's width and height. */
async function readPicture(view: PotScene): Promise<(x: number, y: number) => [number, number, number]> {
  const bitmap = await createImageBitmap(await view.toPng(1))
  const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')
  if (!pen) throw new Error('there is no canvas here')
  pen.drawImage(bitmap, 0, 0)
  return (x, y) => {
    const { data } = pen.getImageData(Math.round(x * bitmap.width), Math.round(y * bitmap.height), 1, 1)
    return [data[0] ?? 0, data[1] ?? 0, data[2] ?? 0]
  }
}

// Making a view builds its programs on the card, which is slow without one: these tests share a view.
describe('a view', { timeout: 120_000 }, () => {
  let view: PotScene
  beforeAll(async () => {
    addHost()
    view = open()
    await frame()
  }, 120_000)
  afterAll(removeHost)
  afterEach(() => {
    vi.restoreAllMocks()
  })

  test('shows something other than the empty ground', async () => {
    const before = await pixels(view)
    view.show(modelOf(starter(0)))
    expect(await pixels(view)).not.toBe(before)
  })

  test('is saved at twice its size', async () => {
    view.show(modelOf(starter(0)))
    const bitmap = await createImageBitmap(await view.toPng(2))
    expect([bitmap.width, bitmap.height]).toEqual([320, 240])
  })

  test('is darker behind in the dark theme', async () => {
    view.show(modelOf(starter(0)))
    const [light] = (await readPicture(view))(0.03, 0.03)
    document.documentElement.dataset['theme'] = 'dark'
    view.theme('dark')
    const [dark] = (await readPicture(view))(0.03, 0.03)
    delete document.documentElement.dataset['theme']
    view.theme('light')
    expect(dark).toBeLessThan(light - 60)
  })

  test('is drawn only when something changed', async () => {
    view.show(modelOf(starter(0)))
    for (let k = 0; k < 5; k++) await frame()
    const gl = picture().getContext('webgl2')
    if (!gl) throw new Error('there is no WebGL here')
    const draws = vi.spyOn(gl, 'drawElements')
    for (let k = 0; k < 10; k++) await frame()
    expect(draws).not.toHaveBeenCalled()
    view.highlight('netting')
    await frame()
    await frame()
    expect(draws).toHaveBeenCalled()
  })

  const press = (key: string) =>
    host.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }))

  test('takes the focus; arrows turn the pot and Home turns it back', async () => {
    view.show(modelOf(starter(0)))
    expect(host.tabIndex).toBe(0)
    const home = await pixels(view)
    press('ArrowLeft')
    await frame()
    expect(await pixels(view)).not.toBe(home)
    press('Home')
    await frame()
    await expect.poll(() => pixels(view)).toBe(home)
  })

  test('leaves other keys alone', () => {
    view.show(modelOf(starter(0)))
    expect(press('s')).toBe(true)
    expect(press('ArrowUp')).toBe(false)
  })

  test('a click on the float picks the float, and one on the ground picks nothing', async () => {
    const big = { shape: 'sphere', diameterMm: 900, massKg: 1, material: 'PVC' } as const
    view.show(modelOf({ ...starter(0), float: { ...big, colours: ['red'], pattern: 'solid' } }))
    view.view('three-quarter')
    const colour = await readPicture(view)
    const places = Array.from({ length: 400 }, (_, k) => [(k % 20) / 20, Math.floor(k / 20) / 20] as const)
    const red = places.filter(([x, y]) => {
      const [r, g, b] = colour(x, y)
      return r > 110 && g < r / 3 && b < r / 3
    })
    const onFloat = red[Math.floor(red.length / 2)]
    if (!onFloat) throw new Error('the float is not in the picture')
    picked = []
    const area = picture().getBoundingClientRect()
    for (const [x, y] of [onFloat, [0.01, 0.01] as const]) {
      const at = { clientX: area.left + x * area.width, clientY: area.top + y * area.height }
      for (const kind of ['pointerdown', 'pointerup'])
        picture().dispatchEvent(new PointerEvent(kind, { ...at, pointerId: 1, bubbles: true }))
    }
    expect(picked).toEqual(['float', undefined])
  })

  test('holds no more on the card after 500 changes of the design', { timeout: 400_000 }, async () => {
    const changed = (k: number): SceneModel => {
      const pot = starter(k)
      const members = pot.frame?.map((member) => ({ ...member, barDiameterMm: 6 + (k % 7) }))
      const mode = k % 11 === 0 ? 'haul' : k % 7 === 0 ? 'findings' : 'built'
      return modelOf(
        { ...pot, ...(members && { frame: members }), body: { ...pot.body, heightMm: 250 + (k % 50) } },
        { mode, bottom: k % 2 ? 'sand' : 'mud' },
      )
    }
    const sweep = async (changes: number) => {
      for (let k = 0; k < changes; k++) {
        view.show(changed(k))
        await frame()
      }
      view.show(modelOf(starter(0)))
      await frame()
      await frame()
      return view.memory()
    }
    // The first round makes what is kept for good: bottoms, grains and the crab.
    const before = await sweep(5)
    const after = await sweep(500)
    expect(before.geometries).toBeGreaterThan(5)
    expect(after).toEqual(before)
  })

  test('draws the smallest mesh on the largest pot that a design may have', async () => {
    const densest = v.parse(PotSchema, {
      ...starter(1),
      body: {
        shape: 'round',
        baseDiameterMm: 3000,
        topDiameterMm: 3000,
        heightMm: 2000,
        folds: false,
        feet: 0,
      },
      netting: { material: 'PE', twineDiameterMm: 1, barLengthMm: 5, knotted: true },
    })
    const bare = { ...densest, netting: undefined }
    // Nor does the crab's name lie over it.
    const alone = { crabWidthMm: undefined }
    view.show(modelOf(v.parse(PotSchema, JSON.parse(JSON.stringify(bare))), alone))
    view.view('three-quarter')
    // Below the middle, where the float does not hide the netting.
    const [without] = (await readPicture(view))(0.5, 0.65)
    view.show(modelOf(densest, alone))
    const [within] = (await readPicture(view))(0.5, 0.65)
    // A close veil of black twine darkens what lies behind it, and does not hide it.
    expect(within).toBeLessThan(without - 15)
    expect(within).toBeGreaterThan(20)
  })
})

describe('without a graphics card', { timeout: 120_000 }, () => {
  beforeEach(addHost)
  afterEach(() => {
    vi.restoreAllMocks()
    removeHost()
  })

  test('says so, takes every call and leaves no picture behind', async () => {
    vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null)
    const said: (string | undefined)[] = []
    const view = open({ onError: (message) => said.push(message) })
    expect(said).toEqual([noPicture])
    expect(view.works).toBe(false)
    view.show(modelOf(starter(0)))
    view.view('top')
    view.highlight('float')
    view.theme('dark')
    await expect(view.toPng()).rejects.toThrow(noPicture)
    expect(host.childElementCount).toBe(0)
  })

  test('a lost one is told of, and the picture is made anew when it is back', async () => {
    const said: (string | undefined)[] = []
    const view = open({ onError: (message) => said.push(message) })
    view.show(modelOf(starter(0)))
    await frame()
    const drawn = await pixels(view)
    const first = picture()
    const loss = first.getContext('webgl2')?.getExtension('WEBGL_lose_context')
    loss?.loseContext()
    await vi.waitFor(() => {
      expect(said).toEqual([pictureLost])
    })
    loss?.restoreContext()
    await vi.waitFor(() => {
      expect(said).toEqual([pictureLost, undefined])
    })
    expect(picture()).not.toBe(first)
    expect(host.querySelectorAll('canvas')).toHaveLength(2)
    expect(await pixels(view)).toBe(drawn)
  })

  test('disposing leaves the host as it was', () => {
    open().show(modelOf(starter(0)))
    scene?.dispose()
    expect(host.childElementCount).toBe(0)
  })
})
