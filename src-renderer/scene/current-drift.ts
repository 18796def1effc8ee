import {
  BufferAttribute,
  BufferGeometry,
  CanvasTexture,
  Group,
  Mesh,
  MeshBasicMaterial,
  Points,
  PointsMaterial,
  Shape,
  ShapeGeometry,
  Vector3,
  DoubleSide,
} from 'three'
import { createRandom } from './noise'
import type { Palette } from './palette'

const specks = 150
const arrows = 3
/** Height of the water that the specks fill, in reaches. */
const column = 0.62

/** Specks carried by the current and arrows on the bottom that point where it runs. */
export interface CurrentDrift {
  readonly group: Group
  /** Where the arrows are, for the label with the speed; undefined in still water. */
  readonly labelAt: Vector3
  show(speedMps: number, direction: Vector3, potRadiusM: number, reachM: number): void
  colours(palette: Palette): void
  step(deltaMs: number): void
  dispose(): void
}

export function createCurrentDrift(): CurrentDrift {
  const group = new Group()
  const turned = new Group()
  group.add(turned)
  const random = createRandom(77)
  const places = Float32Array.from({ length: specks * 3 }, random)
  const cloud = new BufferGeometry()
  const position = new BufferAttribute(new Float32Array(specks * 3), 3)
  cloud.setAttribute('position', position)
  const soft = speckTexture()
  const speckMaterial = new PointsMaterial({
    size: 0.012,
    map: soft,
    transparent: true,
    depthWrite: false,
    opacity: 0.75,
  })
  const points = new Points(cloud, speckMaterial)
  points.frustumCulled = false
  turned.add(points)

  const arrow = arrowGeometry()
  const arrowMaterial = new MeshBasicMaterial({
    transparent: true,
    opacity: 0.62,
    side: DoubleSide,
    forceSinglePass: true,
    toneMapped: false,
    depthWrite: false,
  })
  const pointers = Array.from({ length: arrows }, () => new Mesh(arrow, arrowMaterial))
  turned.add(...pointers)
  const labelAt = new Vector3()
  let speed = 0
  let reach = 1

  function settle() {
    for (let k = 0; k < specks; k++) {
      const [u = 0, v = 0, w = 0] = places.subarray(k * 3, k * 3 + 3)
      position.setXYZ(k, (u * 2 - 1) * reach, (0.02 + 0.98 * v) * column * reach, (w * 2 - 1) * reach)
    }
    position.needsUpdate = true
  }

  return {
    group,
    labelAt,
    show(speedMps, direction, potRadiusM, reachM) {
      speed = speedMps
      reach = reachM
      group.visible = speed > 0
      if (speed <= 0) return
      // The turned group's +x is down-current.
      turned.rotation.y = Math.atan2(-direction.z, direction.x)
      speckMaterial.size = reach * 0.02
      const length = potRadiusM * Math.min(0.8, 0.25 + 0.25 * speed)
      pointers.forEach((pointer, k) => {
        pointer.scale.set(length, 1, potRadiusM * 0.2)
        pointer.position.set(-potRadiusM * 1.2 - length, 0.004, (k - 1) * potRadiusM * 0.62)
      })
      labelAt
        .set(-potRadiusM * 1.2 - length, 0.01, potRadiusM * 0.62)
        .applyAxisAngle(new Vector3(0, 1, 0), turned.rotation.y)
      settle()
    },
    colours(palette) {
      arrowMaterial.color.set(palette.water)
      speckMaterial.color.set(palette.speck)
    },
    step(deltaMs) {
      for (let k = 0; k < specks; k++) {
        const height = places[k * 3 + 1] ?? 0
        // Slower near the bottom, as the seventh-power profile has it.
        const along =
          ((places[k * 3] ?? 0) + ((speed * height ** (1 / 7)) / (2 * reach)) * (deltaMs / 1000)) % 1
        places[k * 3] = along
      }
      settle()
    },
    dispose() {
      cloud.dispose()
      arrow.dispose()
      soft.dispose()
      speckMaterial.dispose()
      arrowMaterial.dispose()
    },
  }
}

/** A flat arrow one unit long along +x, one wide, lying on the bottom. */
function arrowGeometry(): ShapeGeometry {
  const outline = new Shape()
  outline.moveTo(0, -0.16)
  outline.lineTo(0.62, -0.16)
  outline.lineTo(0.62, -0.5)
  outline.lineTo(1, 0)
  outline.lineTo(0.62, 0.5)
  outline.lineTo(0.62, 0.16)
  outline.lineTo(0, 0.16)
  outline.closePath()
  return new ShapeGeometry(outline).rotateX(-Math.PI / 2) as ShapeGeometry
}

function speckTexture(): CanvasTexture {
  const canvas = document.createElement('canvas')
  canvas.width = canvas.height = 32
  const pen = canvas.getContext('2d')
  if (pen) {
    const fall = pen.createRadialGradient(16, 16, 0, 16, 16, 16)
    fall.addColorStop(0, 'rgba(255,255,255,1)')
    fall.addColorStop(0.4, 'rgba(255,255,255,0.7)')
    fall.addColorStop(1, 'rgba(255,255,255,0)')
    pen.fillStyle = fall
    pen.fillRect(0, 0, 32, 32)
  }
  return new CanvasTexture(canvas)
}
