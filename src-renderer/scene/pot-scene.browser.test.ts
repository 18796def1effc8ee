import '@renderer/ui/theme.css'
import { starterPots } from '@shared/design/starter-pots'
import type { PartName } from '@shared/schema/check'
import { PotSchema, type Pot } from '@shared/schema/pot'
import * as v from 'valibot'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
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

function open(more: Partial<SceneOptions> = {}): PotScene {
  scene = createPotScene(host, {
    reducedMotion: true,
    theme: 'light',
    lengthText: (metres) => `${String(Math.round(metres * 1000))} mm`,
    speedText: (speed) => `${String(speed)} m/s`,
    ...more,
  })
  return scene
}

function picture(): HTMLCanvasElement {
  const canvas = host.querySelector('canvas')
  if (!canvas) throw new Error('there is no picture')
  return canvas
}

beforeEach(() => {
  host = document.createElement('div')
  Object.assign(host.style, { position: 'relative', width: '320px', height: '240px' })
  document.body.append(host)
})

afterEach(() => {
  scene?.dispose()
  scene = undefined
  host.remove()
  vi.restoreAllMocks()
})

/** Colour at a share of the picture's width and height. */
async function colourAt(view: PotScene, x: number, y: number): Promise<number[]> {
  const bitmap = await createImageBitmap(await view.toPng(1))
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height)
  const pen = canvas.getContext('2d')
  pen?.drawImage(bitmap, 0, 0)
  return [
    ...(pen?.getImageData(Math.round(x * bitmap.width), Math.round(y * bitmap.height), 1, 1).data ?? []),
  ]
}

describe('the picture', () => {
  test('is saved at twice its size', async () => {
    const view = open()
    view.show(modelOf(starter(0)))
    const bitmap = await createImageBitmap(await view.toPng(2))
    expect([bitmap.width, bitmap.height]).toEqual([640, 480])
  })

  test('shows something other than the empty ground', async () => {
    const view = open()
    const before = await (await view.toPng(1)).text()
    view.show(modelOf(starter(0)))
    expect(await (await view.toPng(1)).text()).not.toBe(before)
  })

  test('is darker behind in the dark theme', async () => {
    const view = open()
    view.show(modelOf(starter(0)))
    const [light = 0] = await colourAt(view, 0.03, 0.03)
    document.documentElement.dataset['theme'] = 'dark'
    view.theme('dark')
    const [dark = 255] = await colourAt(view, 0.03, 0.03)
    delete document.documentElement.dataset['theme']
    expect(dark).toBeLessThan(light - 60)
  })

  test('is drawn only when something changed', async () => {
    const view = open()
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
})

describe('keys', () => {
  const press = (key: string) =>
    host.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }))

  test('the host takes the focus, arrows turn the pot and Home turns it back', async () => {
    const view = open()
    view.show(modelOf(starter(0)))
    expect(host.tabIndex).toBe(0)
    const home = await (await view.toPng(1)).text()
    press('ArrowLeft')
    await frame()
    expect(await (await view.toPng(1)).text()).not.toBe(home)
    press('Home')
    await frame()
    expect(await (await view.toPng(1)).text()).toBe(home)
  })

  test('other keys are left alone', () => {
    open().show(modelOf(starter(0)))
    expect(press('s')).toBe(true)
    expect(press('ArrowUp')).toBe(false)
  })
})

test('a click on the float picks the float, and one on the ground picks nothing', async () => {
  const picked: (PartName | undefined)[] = []
  const view = open({ onPick: (part) => picked.push(part) })
  const pot: Pot = {
    ...starter(0),
    float: {
      shape: 'sphere',
      diameterMm: 900,
      massKg: 1,
      material: 'PVC',
      colours: ['red'],
      pattern: 'solid',
    },
  }
  view.show(modelOf(pot))
  await frame()
  const frameBox = picture().getBoundingClientRect()
  const click = (x: number, y: number) => {
    const at = { clientX: frameBox.left + x * frameBox.width, clientY: frameBox.top + y * frameBox.height }
    const common = { ...at, button: 0, pointerId: 1, bubbles: true }
    picture().dispatchEvent(new PointerEvent('pointerdown', common))
    picture().dispatchEvent(new PointerEvent('pointerup', common))
  }
  // The float is by far the largest thing here and the highest: the first red place from above is on it.
  let red: [number, number] | undefined
  for (let y = 0.1; y < 0.6 && !red; y += 0.05) {
    for (let x = 0.2; x < 0.8 && !red; x += 0.05) {
      const [r = 0, g = 0, b = 0] = await colourAt(view, x, y)
      if (r > 120 && g < 90 && b < 90) red = [x, y + 0.02]
    }
  }
  if (!red) throw new Error('the float is not in the picture')
  click(...red)
  click(0.01, 0.01)
  expect(picked).toEqual(['float', undefined])
})

test('memory stays the same over 500 changes of the design', { timeout: 300_000 }, async () => {
  const view = open()
  const changed = (k: number): SceneModel => {
    const pot = starter(k)
    const frameOf = pot.frame?.map((member) => ({ ...member, barDiameterMm: 6 + (k % 7) }))
    return modelOf(
      { ...pot, ...(frameOf && { frame: frameOf }), body: { ...pot.body, heightMm: 250 + (k % 50) } },
      { mode: k % 11 === 0 ? 'haul' : k % 7 === 0 ? 'findings' : 'built', bottom: k % 2 ? 'sand' : 'mud' },
    )
  }
  const sweep = async (from: number, to: number) => {
    for (let k = from; k < to; k++) {
      view.show(changed(k))
      if (k % 25 === 0) await frame()
    }
    view.show(modelOf(starter(0)))
    await frame()
    await frame()
    return view.memory()
  }
  const before = await sweep(0, 2 * starterPots.length * 11)
  const after = await sweep(0, 500)
  expect(before.geometries).toBeGreaterThan(5)
  expect(after).toEqual(before)
})

test(
  'the smallest mesh on the largest pot that a design may have is drawn',
  { timeout: 60_000 },
  async () => {
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
      netting: { material: 'PE', twineDiameterMm: 0.5, barLengthMm: 5, knotted: true },
    })
    const view = open()
    const started = performance.now()
    view.show(modelOf(densest))
    expect(performance.now() - started).toBeLessThan(10_000)
    expect((await view.toPng(1)).size).toBeGreaterThan(1000)
  },
)

describe('without a graphics card', () => {
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
    const drawn = await (await view.toPng(1)).text()
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
    expect(await (await view.toPng(1)).text()).toBe(drawn)
  })
})

test('disposing leaves the host as it was', () => {
  open().show(modelOf(starter(0)))
  scene?.dispose()
  expect(host.childElementCount).toBe(0)
})
