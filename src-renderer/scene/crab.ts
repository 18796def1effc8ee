import { Group, Mesh, MeshPhongMaterial, type Vector3 } from 'three'
import { crabGeometry } from './crab-geometry'
import { castLayers } from './soft-shadow'

/** Height of its back over its width. */
const backHeight = 0.3

/** A crab beside the pot, true to size. Made when first asked for. */
export interface Crab {
  readonly group: Group
  /** Stands it on the bottom at a place, facing the pot; no width puts it away. */
  stand(widthMm: number | undefined, x: number, z: number): void
  /** Middle of its back, where it is named. */
  top(): Vector3
  dispose(): void
}

export function createCrab(): Crab {
  const group = new Group()
  const material = new MeshPhongMaterial({ vertexColors: true, shininess: 28, specular: '#3a322c' })
  let mesh: Mesh | undefined

  return {
    group,
    stand(widthMm, x, z) {
      group.visible = widthMm !== undefined
      if (widthMm === undefined) return
      if (!mesh) {
        mesh = new Mesh(crabGeometry(), material)
        mesh.layers.enable(castLayers.solid)
        group.add(mesh)
      }
      group.scale.setScalar(widthMm / 1000)
      group.position.set(x, 0, z)
      group.rotation.y = 0.5
    },
    top: () => group.position.clone().setY(backHeight * group.scale.x),
    dispose() {
      mesh?.geometry.dispose()
      material.dispose()
    },
  }
}
