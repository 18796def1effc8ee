import {
  CanvasTexture,
  DirectionalLight,
  HemisphereLight,
  NeutralToneMapping,
  PerspectiveCamera,
  Scene,
  SRGBColorSpace,
  Vector2,
  Vector3,
  type Texture,
  WebGLRenderer,
} from 'three'
import type { Palette } from './palette'
import { studioLight } from './studio-light'

/** The room a pot stands in: renderer, camera, neutral light and the slate ground behind. */
export interface Stage {
  readonly renderer: WebGLRenderer
  readonly scene: Scene
  readonly camera: PerspectiveCamera
  /** Towards the key light, in the world; shared with twine and shadow. */
  readonly key: Vector3
  /** What metal mirrors. */
  readonly studio: Texture
  /** Size of the drawing [px], shared with twine. */
  readonly screen: Vector2
  resize(width: number, height: number, pixelRatio: number): void
  ground(palette: Palette): void
  dispose(): void
}

/** Undefined where this machine has no WebGL 2. */
export function createStage(canvas: HTMLCanvasElement): Stage | undefined {
  let renderer: WebGLRenderer
  try {
    const context = canvas.getContext('webgl2', { antialias: true, alpha: false, stencil: false })
    if (!context) return undefined
    renderer = new WebGLRenderer({ canvas, context, antialias: true })
  } catch {
    // Three throws when the driver refuses; the caller shows the message.
    return undefined
  }
  renderer.outputColorSpace = SRGBColorSpace
  renderer.toneMapping = NeutralToneMapping
  renderer.toneMappingExposure = 0.95

  const scene = new Scene()
  const camera = new PerspectiveCamera(28, 1, 0.01, 200)
  const key = new Vector3(0.42, 1, 0.55).normalize()
  const screen = new Vector2(1, 1)

  const studio = studioLight(renderer)

  const keyLight = new DirectionalLight('#fffaf2', 1.7)
  keyLight.position.copy(key).multiplyScalar(10)
  const sky = new HemisphereLight('#eef4f8', '#b0aca4', 3.7)
  scene.add(keyLight, sky)

  let ground: CanvasTexture | undefined

  return {
    renderer,
    scene,
    camera,
    key,
    screen,
    studio: studio.texture,
    resize(width, height, pixelRatio) {
      renderer.setPixelRatio(pixelRatio)
      renderer.setSize(width, height, false)
      screen.set(width * pixelRatio, height * pixelRatio)
      camera.aspect = width / height
      camera.updateProjectionMatrix()
    },
    ground(palette) {
      ground?.dispose()
      ground = groundTexture(palette.groundMiddle, palette.groundEdge)
      scene.background = ground
    },
    dispose() {
      ground?.dispose()
      studio.dispose()
      keyLight.dispose()
      sky.dispose()
      renderer.dispose()
    },
  }
}

/** A quiet fall of light from the middle outwards. */
function groundTexture(middle: string, edge: string): CanvasTexture {
  const canvas = document.createElement('canvas')
  canvas.width = 256
  canvas.height = 256
  const pen = canvas.getContext('2d')
  if (pen) {
    const fall = pen.createRadialGradient(128, 110, 10, 128, 128, 190)
    fall.addColorStop(0, middle)
    fall.addColorStop(1, edge)
    pen.fillStyle = fall
    pen.fillRect(0, 0, 256, 256)
  }
  const texture = new CanvasTexture(canvas)
  texture.colorSpace = SRGBColorSpace
  return texture
}
