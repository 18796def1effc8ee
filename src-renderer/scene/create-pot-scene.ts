import type { PartName } from '@shared/schema/check'
import { openPotScene } from './pot-scene'
import type { PotScene, SceneModel, SceneOptions, Theme } from './scene-model'

export const noPicture =
  'This machine cannot draw in 3D, so there is no picture. Everything else works, and the pot is described in words.'
export const pictureLost = 'The graphics driver stopped. The picture comes back by itself; nothing was lost.'

/**
 * The view of a pot, kept whole when the graphics card is lost and given back: everything on the card is then made
 * anew from the last model. Where there is no card at all it says so, and takes every call in silence.
 */
export function createPotScene(host: HTMLElement, options: SceneOptions): PotScene {
  let theme = options.theme
  let model: SceneModel | undefined
  let lit: PartName | undefined
  let inner = open()
  if (!inner) options.onError?.(noPicture)

  function open(): PotScene | undefined {
    const scene = openPotScene(host, { ...options, theme })
    if (model) scene?.show(model)
    scene?.highlight(lit)
    return scene
  }

  // Canvas events do not bubble, so they are caught on the way down.
  function lost(event: Event) {
    event.preventDefault()
    options.onError?.(pictureLost)
  }
  function restored() {
    inner?.dispose()
    inner = open()
    options.onError?.(inner ? undefined : noPicture)
  }
  host.addEventListener('webglcontextlost', lost, true)
  host.addEventListener('webglcontextrestored', restored, true)

  return {
    get works() {
      return inner !== undefined
    },
    show(next) {
      model = next
      inner?.show(next)
    },
    view: (name) => inner?.view(name),
    highlight(part) {
      lit = part
      inner?.highlight(part)
    },
    theme(next: Theme) {
      theme = next
      inner?.theme(next)
    },
    toPng: (scale) => inner?.toPng(scale) ?? Promise.reject(new Error(noPicture)),
    memory: () => inner?.memory() ?? { geometries: 0, textures: 0 },
    rest() {
      model = lit = undefined
      inner?.rest()
    },
    dispose() {
      host.removeEventListener('webglcontextlost', lost, true)
      host.removeEventListener('webglcontextrestored', restored, true)
      inner?.dispose()
      inner = undefined
    },
  }
}
