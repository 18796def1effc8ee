import {
  BackSide,
  BufferAttribute,
  Color,
  Mesh,
  MeshBasicMaterial,
  PlaneGeometry,
  PMREMGenerator,
  Scene,
  SphereGeometry,
  type WebGLRenderer,
  type WebGLRenderTarget,
} from 'three'

/** Two soft boxes overhead and one at the side, as brightness, place and size. */
const lamps = [
  { brightness: 14, at: [2, 6, 3], size: 5 },
  { brightness: 7, at: [-6, 4, -2], size: 4 },
  { brightness: 4, at: [5, 1.5, -6], size: 3 },
] as const

/** What polished and galvanised metal mirrors: a plain studio, pale above and grey below. The caller disposes it. */
export function studioLight(renderer: WebGLRenderer): WebGLRenderTarget {
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
  const maker = new PMREMGenerator(renderer)
  const light = maker.fromScene(room, 0, 0.1, 30)
  maker.dispose()
  for (const owned of [dome, sheet, walls, ...glows]) owned.dispose()
  return light
}
