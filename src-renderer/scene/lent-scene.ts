import { createPotScene } from './create-pot-scene'
import type { PotScene, SceneOptions } from './scene-model'

/** A view of a pot, lent to whoever shows one, with the element that it stands in. */
export interface LentScene {
  readonly host: HTMLElement
  readonly scene: PotScene
  /** Comes off the page, to be lent again. */
  giveBack(): void
}

interface OwnScene {
  readonly host: HTMLElement
  readonly scene: PotScene
  readonly reducedMotion: boolean
  borrower: SceneOptions | undefined
}

/** The last view that was given back: to make one takes a moment on a graphics card, and seconds without. */
let spare: OwnScene | undefined

/** Lays a view of a pot over the whole of `place`, for as long as it is not given back. */
export function lendScene(place: HTMLElement, options: SceneOptions): LentScene {
  const own = takeSpare(place, options) ?? make(place, options)
  const { host, scene } = own
  return {
    host,
    scene,
    giveBack() {
      own.borrower = undefined
      host.remove()
      if (!scene.works) return scene.dispose()
      scene.rest()
      spare?.scene.dispose()
      spare = own
    },
  }
}

function takeSpare(place: HTMLElement, options: SceneOptions): OwnScene | undefined {
  const taken = spare
  spare = undefined
  if (!taken) return undefined
  // A card may be lost while nobody looks.
  if (!taken.scene.works || taken.reducedMotion !== options.reducedMotion) {
    taken.scene.dispose()
    return undefined
  }
  taken.borrower = options
  place.append(taken.host)
  return taken
}

function make(place: HTMLElement, options: SceneOptions): OwnScene {
  const host = document.createElement('div')
  Object.assign(host.style, { position: 'absolute', inset: '0', overflow: 'hidden' })
  place.append(host)
  const { reducedMotion, theme, lengthText, speedText } = options
  const own: Omit<OwnScene, 'scene'> = { host, reducedMotion, borrower: options }
  const scene = createPotScene(host, {
    reducedMotion,
    theme,
    lengthText,
    speedText,
    onPick: (part) => own.borrower?.onPick?.(part),
    onError: (message) => own.borrower?.onError?.(message),
  })
  return Object.assign(own, { scene })
}
