import type { PartName } from '@shared/schema/check'
import { Raycaster, Vector2 } from 'three'
import { drawNotes } from './annotations'
import { createCameraRig } from './camera-rig'
import { createDrawLoop } from './draw-loop'
import { ease } from './ease'
import { readPalette } from './palette'
import { pictureOf } from './picture'
import { createSceneContent } from './scene-content'
import type { PotScene, SceneMode, SceneModel, SceneOptions, Theme } from './scene-model'
import { createStage, type Stage } from './stage'

const enterMs = 180

/** Findings and wear are shown on the pot as it stands. */
const postureIn = (mode: SceneMode) => (mode === 'findings' || mode === 'wear' ? 'built' : mode)

/**
 * The view of a pot in `host`, which gets two canvases laid over each other: the picture and the words over it.
 * `host` carries the keys, so that it can be focused once. Draws when something changed and not otherwise.
 */
export function openPotScene(host: HTMLElement, options: SceneOptions): PotScene | undefined {
  const canvas = document.createElement('canvas')
  const words = document.createElement('canvas')
  const stage = createStage(canvas)
  const pen = words.getContext('2d')
  if (!stage || !pen) return undefined
  for (const layer of [canvas, words]) {
    Object.assign(layer.style, {
      position: 'absolute',
      inset: '0',
      width: '100%',
      height: '100%',
      display: 'block',
    })
    host.append(layer)
  }
  words.style.pointerEvents = 'none'
  // Black until something is drawn on it.
  canvas.style.visibility = 'hidden'
  host.tabIndex = 0
  return run(host, canvas, words, pen, stage, options)
}

function run(
  host: HTMLElement,
  canvas: HTMLCanvasElement,
  words: HTMLCanvasElement,
  pen: CanvasRenderingContext2D,
  stage: Stage,
  options: SceneOptions,
): PotScene {
  const loop = createDrawLoop(draw)
  const rig = createCameraRig(stage.camera, canvas, loop, options.reducedMotion)
  const content = createSceneContent(stage, options)
  const listening = new AbortController()
  const size = new Vector2(1, 1)
  let palette = readPalette(host, options.theme)
  let model: SceneModel | undefined
  let pointedAt: PartName | undefined
  let fold = 0
  let pose = 0
  let entering = 0
  let moving = false
  let stale = false
  /** Another pot, or one put another way, which the eye has not come round to yet. */
  let isNew = true

  function draw() {
    bringUp()
    stage.renderer.render(stage.scene, stage.camera)
    canvas.style.visibility = 'visible'
    drawNotes(pen, stage.camera, content.notes(), palette, size.x, size.y)
  }

  function settleSize() {
    const { clientWidth, clientHeight } = host
    if (clientWidth === 0 || clientHeight === 0) return
    const ratio = Math.min(2, window.devicePixelRatio)
    size.set(clientWidth, clientHeight)
    stage.resize(clientWidth, clientHeight, ratio)
    words.width = clientWidth * ratio
    words.height = clientHeight * ratio
    pen.setTransform(ratio, 0, 0, ratio, 0, 0)
    rig.resized()
    // Each thing drawn has its program built on the card, so nothing is drawn ahead of the pot.
    if (model) draw()
  }

  function refresh() {
    stale = true
    loop.invalidate()
  }

  /** However often the design changes between two frames, it is built once. */
  function bringUp() {
    if (!stale || !model) return
    stale = false
    content.show(model, fold, pose)
    content.emphasise(pointedAt)
    rig.current(content.flow)
    rig.frame(content.outline(), isNew)
    isNew &&= moving
  }

  /** Eases into or out of the folded and moved states; a change of the design alone does not move anything. */
  function enter(next: SceneModel) {
    const toFold = next.mode === 'folded' ? 1 : 0
    const toPose = next.mode === 'haul' || next.mode === 'drift' ? 1 : 0
    const fromFold = fold
    const fromPose = model?.mode === next.mode ? pose : 0
    const mine = ++entering
    // The whole rig is tall and thin, and is read from the side.
    const turns = (model?.mode === 'rig') !== (next.mode === 'rig')
    isNew ||= model?.pot.id !== next.pot.id || postureIn(model.mode) !== postureIn(next.mode)
    model = next
    moving = fromFold !== toFold || fromPose !== toPose
    if (!moving) {
      pose = toPose
      refresh()
      if (turns) {
        bringUp()
        rig.view(next.mode === 'rig' ? 'rig' : 'three-quarter')
      }
      return
    }
    ease(loop, options.reducedMotion ? 0 : enterMs, (t) => {
      if (mine !== entering) return
      fold = fromFold + (toFold - fromFold) * t
      pose = fromPose + (toPose - fromPose) * t
      moving = t < 1
      refresh()
    })
  }

  function setTheme(theme: Theme) {
    palette = readPalette(host, theme)
    stage.ground(palette)
    content.colours(palette)
    refresh()
  }

  const caster = new Raycaster()
  function partUnder(event: PointerEvent): PartName | undefined {
    const frame = canvas.getBoundingClientRect()
    const x = ((event.clientX - frame.left) / frame.width) * 2 - 1
    const y = 1 - ((event.clientY - frame.top) / frame.height) * 2
    caster.setFromCamera(new Vector2(x, y), stage.camera)
    const hit = caster.intersectObject(content.pickable, true)[0]
    return hit && content.partOf(hit.object)
  }

  const { signal } = listening
  let pressed: { x: number; y: number } | undefined
  canvas.addEventListener('pointerdown', ({ clientX: x, clientY: y }) => (pressed = { x, y }), { signal })
  canvas.addEventListener(
    'pointerup',
    (event) => {
      // A turn of the view is not a choice of a part.
      const still = pressed && Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) < 4
      pressed = undefined
      if (still && event.button === 0) options.onPick?.(partUnder(event))
    },
    { signal },
  )
  host.addEventListener(
    'keydown',
    (event) => {
      const plain = !event.ctrlKey && !event.metaKey && !event.altKey
      if (event.target === host && plain && rig.key(event.key)) event.preventDefault()
    },
    { signal },
  )
  const watcher = new ResizeObserver(settleSize)
  watcher.observe(host)
  setTheme(options.theme)
  settleSize()

  return {
    works: true,
    show(next) {
      const moves = !options.reducedMotion && (next.currentMps ?? 0) > 0
      const still = next.mode === 'haul' || next.mode === 'folded' || next.mode === 'rig'
      enter(next)
      loop.drift(moves && !still ? content.drift : undefined)
    },
    view(name) {
      bringUp()
      rig.view(name)
    },
    highlight(part) {
      pointedAt = part
      content.emphasise(part)
      loop.invalidate()
    },
    theme: setTheme,
    toPng(scale = 2) {
      bringUp()
      return pictureOf(stage, size, scale, (over) => {
        drawNotes(over, stage.camera, content.notes(), palette, size.x, size.y)
      }).finally(settleSize)
    },
    memory: () => {
      const { geometries, textures } = stage.renderer.info.memory
      return { geometries, textures }
    },
    rest() {
      entering++
      rig.rest()
      loop.halt()
      model = pointedAt = undefined
      fold = pose = 0
      moving = stale = false
      isNew = true
    },
    dispose() {
      listening.abort()
      watcher.disconnect()
      loop.halt()
      rig.dispose()
      content.dispose()
      stage.dispose()
      canvas.remove()
      words.remove()
    },
  }
}
