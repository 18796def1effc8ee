import '@renderer/ui/theme.css'
import { starterPots } from '@shared/design/starter-pots'
import { expect, test, vi } from 'vitest'
import { lendScene, type LentScene } from './lent-scene'
import type { SceneMode } from './scene-model'

function addPlace(): HTMLElement {
  const place = document.createElement('div')
  Object.assign(place.style, { position: 'relative', width: '160px', height: '120px' })
  document.body.append(place)
  return place
}

const optionsOf = () => ({
  reducedMotion: true,
  theme: 'light' as const,
  lengthText: String,
  speedText: String,
  onPick: vi.fn(),
})

function showStarter({ scene }: LentScene, k: number, mode: SceneMode = 'built') {
  const pot = starterPots[k]
  if (!pot) throw new Error('there is no starting shape')
  scene.show({ pot, mode, bottom: 'sand' })
}

async function pixels({ scene }: LentScene) {
  return new Uint8Array(await (await scene.toPng(1)).arrayBuffer()).join()
}

test('a view given back is lent again, and shows the next pot as a new one would', async () => {
  const before = optionsOf()
  const first = lendScene(addPlace(), before)
  showStarter(first, 1, 'folded')
  const beside = lendScene(addPlace(), optionsOf())
  expect(beside.host).not.toBe(first.host)
  showStarter(beside, 0)
  const asNew = await pixels(beside)
  beside.giveBack()
  expect(beside.host.isConnected).toBe(false)

  // Turned and folded by the one before, who hears no more of it.
  first.scene.view('underside')
  first.giveBack()
  const place = addPlace()
  const options = optionsOf()
  const again = lendScene(place, options)
  expect(again.host).toBe(first.host)
  expect(again.host.parentElement).toBe(place)
  showStarter(again, 0)
  await expect.poll(() => pixels(again)).toBe(asNew)
  const canvas = again.host.querySelector('canvas')
  for (const kind of ['pointerdown', 'pointerup'])
    canvas?.dispatchEvent(new PointerEvent(kind, { clientX: 2, clientY: 2, pointerId: 1 }))
  expect(options.onPick).toHaveBeenCalledOnce()
  expect(before.onPick).not.toHaveBeenCalled()
  again.giveBack()

  const moving = lendScene(place, { ...optionsOf(), reducedMotion: false })
  expect(moving.host).not.toBe(first.host)
  moving.giveBack()
}, 120_000)
