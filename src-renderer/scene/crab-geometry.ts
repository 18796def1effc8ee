import {
  BufferAttribute,
  Color,
  ConeGeometry,
  CylinderGeometry,
  Matrix4,
  Quaternion,
  SphereGeometry,
  Vector3,
  type BufferGeometry,
} from 'three'
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js'

/*
 * A crab of no particular species, one unit across the carapace tips, y up, facing +z, standing on y = 0. Its colour
 * is in the vertices, so that one geometry and one material serve for any size.
 */

const shellColour = new Color('#7d4326')
const shellEdge = new Color('#b98a5e')
const legColour = new Color('#8f5630')
const tipColour = new Color('#4a2a1f')
const eyeColour = new Color('#14110f')

const standing = 0.17

export function crabGeometry(): BufferGeometry {
  const pieces = [carapace(), ...teeth(), ...eyes()]
  for (const side of [-1, 1]) {
    pieces.push(...claw(side))
    for (let leg = 0; leg < 4; leg++) pieces.push(...walkingLeg(side, leg))
  }
  const crab = mergeGeometries(pieces.map((piece) => (piece.index ? piece.toNonIndexed() : piece)))
  for (const piece of pieces) piece.dispose()
  return crab
}

function painted(
  geometry: BufferGeometry,
  colourAt: (y: number, x: number, z: number) => Color,
): BufferGeometry {
  const position = geometry.getAttribute('position')
  const colours = new Float32Array(position.count * 3)
  for (let k = 0; k < position.count; k++) {
    colourAt(position.getY(k), position.getX(k), position.getZ(k)).toArray(colours, k * 3)
  }
  geometry.setAttribute('color', new BufferAttribute(colours, 3))
  return geometry
}

/** Broader in front than behind, domed above, flat below. */
function carapace(): BufferGeometry {
  const shell = new SphereGeometry(1, 40, 24)
  const position = shell.getAttribute('position')
  for (let k = 0; k < position.count; k++) {
    const x = position.getX(k)
    const y = position.getY(k)
    const z = position.getZ(k)
    const taper = z < 0 ? 1 + 0.38 * z : 1 - 0.1 * z * z
    const groove = y > 0 ? 0.014 * Math.cos(x * 9) * Math.cos(z * 7) : 0
    position.setXYZ(k, x * 0.47 * taper, standing + (y > 0 ? y * 0.135 : y * 0.075) + groove, z * 0.31 + 0.02)
  }
  shell.computeVertexNormals()
  return painted(shell, (y) =>
    shellEdge.clone().lerp(shellColour, Math.min(1, Math.max(0, (y - standing) / 0.07))),
  )
}

/** Spines along the front edge, the last the longest: the width is measured across or before these. */
function teeth(): BufferGeometry[] {
  const out: BufferGeometry[] = []
  for (const side of [-1, 1]) {
    for (let k = 0; k < 9; k++) {
      const turn = (0.1 + 0.165 * k) * 0.98
      const x = Math.cos(turn) * 0.455
      const z = Math.sin(turn) * 0.285 + 0.025
      const long = k === 0 ? 0.075 : 0.042
      const from = new Vector3(side * x, standing + 0.004, z)
      const way = new Vector3(side * Math.cos(turn), 0, Math.sin(turn) * 0.85)
      out.push(taper(from, from.clone().addScaledVector(way, long), 0.017, 0.001, shellEdge, tipColour))
    }
  }
  return out
}

function eyes(): BufferGeometry[] {
  return [-1, 1].map((side) => {
    const eye = new SphereGeometry(0.02, 10, 8)
    eye.translate(side * 0.075, standing + 0.045, 0.325)
    return painted(eye, () => eyeColour)
  })
}

function claw(side: number): BufferGeometry[] {
  const shoulder = new Vector3(side * 0.3, standing - 0.02, 0.2)
  const elbow = new Vector3(side * 0.5, standing + 0.03, 0.37)
  const wrist = new Vector3(side * 0.4, standing + 0.0, 0.5)
  const palm = new Vector3(side * 0.2, standing - 0.02, 0.57)
  const hand = ball(
    wrist.clone().lerp(palm, 0.45),
    new Vector3(0.125, 0.072, 0.06),
    side * -0.35,
    shellColour,
  )
  const fixed = taper(
    palm,
    new Vector3(side * 0.05, standing - 0.045, 0.55),
    0.034,
    0.004,
    legColour,
    tipColour,
  )
  const moving = taper(
    palm.clone().add(new Vector3(0, 0.028, 0.015)),
    new Vector3(side * 0.055, standing + 0.022, 0.6),
    0.03,
    0.004,
    legColour,
    tipColour,
  )
  return [
    taper(shoulder, elbow, 0.045, 0.058, legColour, legColour),
    ball(elbow, new Vector3(0.066, 0.056, 0.062), 0, shellColour),
    taper(elbow, wrist, 0.05, 0.048, legColour, shellColour),
    hand,
    fixed,
    moving,
  ]
}

function walkingLeg(side: number, leg: number): BufferGeometry[] {
  const turn = 0.42 - leg * 0.46
  const out = new Vector3(side * Math.cos(turn), 0, Math.sin(turn))
  const hip = new Vector3(side * (0.34 - 0.02 * leg), standing - 0.03, 0.11 - leg * 0.085)
  const knee = hip
    .clone()
    .addScaledVector(out, 0.26)
    .setY(standing + 0.1)
  const shin = hip
    .clone()
    .addScaledVector(out, 0.42)
    .setY(standing - 0.01)
  const foot = hip.clone().addScaledVector(out, 0.5).setY(0.004)
  return [
    taper(hip, knee, 0.032, 0.034, legColour, shellColour),
    taper(knee, shin, 0.033, 0.022, legColour, legColour),
    taper(shin, foot, 0.021, 0.002, legColour, tipColour),
  ]
}

function taper(from: Vector3, to: Vector3, r1: number, r2: number, c1: Color, c2: Color): BufferGeometry {
  const length = from.distanceTo(to)
  const solid = r2 < 0.002 ? new ConeGeometry(r1, length, 10) : new CylinderGeometry(r2, r1, length, 10)
  painted(solid, (y) => c1.clone().lerp(c2, y / length + 0.5))
  const turn = new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), to.clone().sub(from).normalize())
  const middle = from.clone().lerp(to, 0.5)
  return solid.applyMatrix4(new Matrix4().compose(middle, turn, new Vector3(1, 1, 1)))
}

function ball(centre: Vector3, radii: Vector3, turn: number, colour: Color): BufferGeometry {
  const solid = new SphereGeometry(1, 18, 12)
  solid.scale(radii.x, radii.y, radii.z).rotateY(turn).translate(centre.x, centre.y, centre.z)
  return painted(solid, () => colour)
}
