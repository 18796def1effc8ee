import {
  BackSide,
  BufferAttribute,
  Color,
  CubeCamera,
  HalfFloatType,
  LinearMipmapLinearFilter,
  Mesh,
  MeshBasicMaterial,
  PlaneGeometry,
  Scene,
  SphereGeometry,
  WebGLCubeRenderTarget,
  type WebGLRenderer,
} from 'three'

/** Two soft boxes overhead and one at the side, as brightness, place and size. */
const lamps = [
  { brightness: 14, at: [2, 6, 3], size: 5 },
  { brightness: 7, at: [-6, 4, -2], size: 4 },
  { brightness: 4, at: [5, 1.5, -6], size: 3 },
] as const

/** Side of each face [px]: no metal of a pot is so bright that it mirrors more. */
const size = 32

/** What polished and galvanised metal mirrors: a plain studio, pale above and grey below. The caller disposes it. */
export function studioLight(renderer: WebGLRenderer): WebGLCubeRenderTarget {
  const room = new Scene()
  const dome = new SphereGeometry(10, 24, 16)
  const height = dome.getAttribute('position')
  const colours = new Float32Array(height.count * 3)
  const below = new Color(0.62, 0.61, 0.58)
  const above = new Color(1.15, 1.2, 1.25)
  for (let k = 0; k < height.count; k++) {
    below
      .clone()
      .lerp(above, (height.getY(k) / 10 + 1) / 2)
      .toArray(colours, k * 3)
  }
  dome.setAttribute('color', new BufferAttribute(colours, 3))
  const walls = new MeshBasicMaterial({ vertexColors: true, side: BackSide })
  room.add(new Mesh(dome, walls))
  const sheet = new PlaneGeometry(1, 1)
  const glows = lamps.map(({ brightness, at, size }) => {
    const glow = new MeshBasicMaterial({ color: new Color(brightness, brightness, brightness) })
    const lamp = new Mesh(sheet, glow)
    lamp.position.set(at[0], at[1], at[2])
    lamp.scale.setScalar(size)
    lamp.lookAt(0, 0, 0)
    room.add(lamp)
    return glow
  })
  const light = new WebGLCubeRenderTarget(size, {
    type: HalfFloatType,
    generateMipmaps: true,
    minFilter: LinearMipmapLinearFilter,
  })
  new CubeCamera(0.1, 30, light).update(renderer, room)
  for (const owned of [dome, sheet, walls, ...glows]) owned.dispose()
  return light
}
