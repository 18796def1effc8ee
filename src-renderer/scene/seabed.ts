import type { Bottom } from '@shared/schema/water'
import { BufferAttribute, Color, Group, Mesh, MeshBasicMaterial, RingGeometry, type Texture } from 'three'
import { bedTexture, bedTileM } from './bed-textures'
import type { Palette } from './palette'

/** The disc of sea floor under the pot, fading out at its rim. */
export interface Seabed {
  readonly group: Group
  show(bottom: Bottom | undefined, radiusM: number): void
  colours(palette: Palette): void
  dispose(): void
}

const rings = 12
/** Share of the radius from which the disc fades. */
const fadeFrom = 0.62

export function createSeabed(): Seabed {
  const disc = fadingDisc()
  const material = new MeshBasicMaterial({ transparent: true, depthWrite: false, vertexColors: true })
  const mesh = new Mesh(disc, material)
  mesh.renderOrder = -2
  const group = new Group()
  group.add(mesh)
  const drawn = new Map<Bottom, Texture>()
  let palette: Palette | undefined

  function paint() {
    if (!palette) return
    // Where the bottom is not known the disc stays plain, rather than guess at sand.
    if (material.map) material.color.set('#ffffff').lerp(new Color(palette.groundMiddle), palette.bedQuiet)
    else material.color.set(palette.groundEdge)
  }

  return {
    group,
    show(bottom, radiusM) {
      mesh.scale.setScalar(radiusM)
      const map = bottom ? (drawn.get(bottom) ?? bedTexture(bottom)) : null
      if (bottom && map) {
        drawn.set(bottom, map)
        const tiles = (2 * radiusM) / bedTileM
        map.repeat.set(tiles, tiles)
        map.offset.set(-tiles / 2, -tiles / 2)
      }
      // A material with and one without a map are different programs.
      if ((map === null) !== (material.map === null)) material.needsUpdate = true
      material.map = map
      paint()
    },
    colours(next) {
      palette = next
      paint()
    },
    dispose() {
      disc.dispose()
      material.dispose()
      for (const texture of drawn.values()) texture.dispose()
    },
  }
}

/** A disc of radius one, lying flat, clear at its rim. */
function fadingDisc(): RingGeometry {
  const disc = new RingGeometry(0, 1, 72, rings)
  const position = disc.getAttribute('position')
  const colours = new Float32Array(position.count * 4).fill(1)
  for (let k = 0; k < position.count; k++) {
    const out = Math.hypot(position.getX(k), position.getY(k))
    const share = Math.min(1, Math.max(0, (out - fadeFrom) / (1 - fadeFrom)))
    colours[k * 4 + 3] = 1 - share * share * (3 - 2 * share)
  }
  disc.setAttribute('color', new BufferAttribute(colours, 4))
  disc.rotateX(-Math.PI / 2)
  return disc
}
