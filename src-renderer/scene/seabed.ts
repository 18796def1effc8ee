import type { Bottom } from '@shared/schema/water'
import { CanvasTexture, CircleGeometry, Color, Group, Mesh, MeshLambertMaterial } from 'three'
import { bedTextures, bedTileM, type BedTextures } from './bed-textures'
import type { Palette } from './palette'

/** The disc of sea floor under the pot, fading out at its rim. */
export interface Seabed {
  readonly group: Group
  show(bottom: Bottom | undefined, radiusM: number): void
  colours(palette: Palette): void
  dispose(): void
}

const reliefOf: Record<Bottom, number> = {
  mud: 1.2,
  silt: 1.2,
  'silty-sand': 1.5,
  sand: 1.6,
  'rippled-sand': 4,
  gravel: 5,
  rock: 5,
}

export function createSeabed(): Seabed {
  const rim = rimTexture()
  const disc = new CircleGeometry(1, 96).rotateX(-Math.PI / 2)
  const material = new MeshLambertMaterial({
    transparent: true,
    depthWrite: false,
    alphaMap: rim,
  })
  const mesh = new Mesh(disc, material)
  mesh.renderOrder = -2
  const group = new Group()
  group.add(mesh)
  const drawn = new Map<Bottom, BedTextures>()
  let shown: Bottom = 'sand'

  return {
    group,
    show(bottom, radiusM) {
      // Where the bottom is not known the disc stays plain, rather than guess at sand.
      mesh.scale.setScalar(radiusM)
      if (!bottom) {
        material.map = null
        material.bumpMap = null
        material.needsUpdate = true
        return
      }
      const textures = drawn.get(bottom) ?? bedTextures(bottom)
      drawn.set(bottom, textures)
      const tiles = (2 * radiusM) / bedTileM
      for (const texture of [textures.colour, textures.relief]) {
        texture.repeat.set(tiles, tiles)
        texture.offset.set(-tiles / 2, -tiles / 2)
      }
      const fresh = material.map === null || shown !== bottom
      shown = bottom
      material.map = textures.colour
      material.bumpMap = textures.relief
      material.bumpScale = reliefOf[bottom]
      if (fresh) material.needsUpdate = true
    },
    colours(palette) {
      material.color.set('#ffffff').lerp(new Color(palette.groundEdge), palette.bedQuiet)
    },
    dispose() {
      disc.dispose()
      material.dispose()
      rim.dispose()
      for (const { colour, relief } of drawn.values()) {
        colour.dispose()
        relief.dispose()
      }
    },
  }
}

function rimTexture(): CanvasTexture {
  const canvas = document.createElement('canvas')
  canvas.width = canvas.height = 256
  const pen = canvas.getContext('2d')
  if (pen) {
    const fade = pen.createRadialGradient(128, 128, 60, 128, 128, 128)
    fade.addColorStop(0, '#ffffff')
    fade.addColorStop(0.72, '#cccccc')
    fade.addColorStop(1, '#000000')
    pen.fillStyle = fade
    pen.fillRect(0, 0, 256, 256)
  }
  return new CanvasTexture(canvas)
}
