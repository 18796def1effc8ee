import { CircleGeometry, DoubleSide, Mesh, MeshBasicMaterial, RingGeometry, Group } from 'three'
import type { Palette } from './palette'

/** A faint sheet where the water ends. */
export interface WaterSurface {
  readonly group: Group
  show(heightM: number | undefined, radiusM: number): void
  colours(palette: Palette): void
  dispose(): void
}

export function createWaterSurface(): WaterSurface {
  const disc = new CircleGeometry(1, 96).rotateX(-Math.PI / 2)
  const rim = new RingGeometry(0.9975, 1, 128).rotateX(-Math.PI / 2)
  const sheet = new MeshBasicMaterial({
    transparent: true,
    opacity: 0.2,
    side: DoubleSide,
    forceSinglePass: true,
    depthWrite: false,
  })
  const edge = sheet.clone()
  edge.opacity = 0.6
  const group = new Group()
  group.add(new Mesh(disc, sheet), new Mesh(rim, edge))
  group.renderOrder = 3

  return {
    group,
    show(heightM, radiusM) {
      group.visible = heightM !== undefined
      group.position.y = heightM ?? 0
      group.scale.set(radiusM, 1, radiusM)
    },
    colours(palette) {
      sheet.color.set(palette.water)
      edge.color.set(palette.water)
    },
    dispose() {
      disc.dispose()
      rim.dispose()
      sheet.dispose()
      edge.dispose()
    },
  }
}
