import { Box3, MathUtils, MOUSE, Spherical, Vector3, type PerspectiveCamera } from 'three'
import { OrbitControls } from 'three/addons/controls/OrbitControls.js'
import type { DrawLoop } from './draw-loop'
import { fitView } from './camera-fit'
import { ease } from './ease'
import type { ViewName } from './scene-model'

/** The eye: goes round the pot by mouse, touch, keys or named view, and keeps it framed. */
export interface CameraRig {
  /** Points of the world that have to stay in the picture; fitted `anew` though they may still be in it. */
  frame(points: readonly Vector3[], anew: boolean): void
  view(name: ViewName | 'rig'): void
  /** Direction the current runs to, for the view from up-current. */
  current(direction: Vector3): void
  /** Turns by a key's name; false where the key means nothing here. */
  key(name: string): boolean
  resized(): void
  /** Forgets where it looked from. */
  rest(): void
  dispose(): void
}

const easeMs = 180
const keyTurn = MathUtils.degToRad(10)
const least = 0.72
const most = 1.12
const homeDirection = new Vector3(0.72, 0.46, 0.78).normalize()

export function createCameraRig(
  camera: PerspectiveCamera,
  canvas: HTMLCanvasElement,
  loop: DrawLoop,
  reducedMotion: boolean,
): CameraRig {
  const controls = new OrbitControls(camera, canvas)
  controls.enableDamping = !reducedMotion
  controls.dampingFactor = 0.14
  controls.maxPolarAngle = Math.PI * 0.985
  controls.minPolarAngle = 0.001
  controls.zoomSpeed = 0.8
  controls.mouseButtons = { LEFT: MOUSE.ROTATE, MIDDLE: MOUSE.DOLLY, RIGHT: MOUSE.PAN }
  const box = new Box3(new Vector3(-0.5, 0, -0.5), new Vector3(0.5, 0.5, 0.5))
  let outline: readonly Vector3[] = []
  const flow = new Vector3(-1, 0, 0)
  let framed = false
  let touched = false
  let move = 0
  let fitted = 0

  // Damping needs a frame after the last touch until the turn has run out; update() says when it has.
  let settling = false
  function settle() {
    loop.invalidate()
    if (settling) return
    settling = true
    loop.animate(() => (settling = controls.update()))
  }
  controls.addEventListener('start', () => {
    touched = true
    move++
    settle()
  })
  controls.addEventListener('change', settle)

  const fit = (direction: Vector3) => fitView(outline, direction, camera)
  const extent = () => box.getSize(new Vector3()).length()

  function reach(): void {
    const size = extent()
    controls.minDistance = size * 0.12
    controls.maxDistance = size * 6
    camera.near = size * 0.01
    camera.far = size * 16
    camera.updateProjectionMatrix()
  }

  function place(direction: Vector3, { target, distance } = fit(direction)): void {
    controls.target.copy(target)
    camera.position.copy(target).addScaledVector(direction, distance)
    controls.update()
    loop.invalidate()
  }

  function moveTo(direction: Vector3, durationMs: number): void {
    const { target, distance } = fit(direction)
    const from = new Spherical().setFromVector3(camera.position.clone().sub(controls.target))
    const to = new Spherical().setFromVector3(direction)
    to.theta = from.theta + MathUtils.euclideanModulo(to.theta - from.theta + Math.PI, 2 * Math.PI) - Math.PI
    to.radius = distance
    const start = controls.target.clone()
    const mine = ++move
    reach()
    ease(loop, reducedMotion ? 0 : durationMs, (t) => {
      if (mine !== move) return
      const step = new Spherical(
        MathUtils.lerp(from.radius, to.radius, t),
        MathUtils.lerp(from.phi, to.phi, t),
        MathUtils.lerp(from.theta, to.theta, t),
      )
      step.makeSafe()
      const at = new Vector3().setFromSpherical(step)
      place(at.clone().normalize(), { target: start.clone().lerp(target, t), distance: at.length() })
    })
  }

  function directionOf(name: ViewName | 'rig'): Vector3 {
    const across = new Vector3(-flow.z, 0, flow.x)
    switch (name) {
      case 'side':
        return across.addScaledVector(new Vector3(0, 1, 0), 0.06).normalize()
      case 'rig':
        return across
          .addScaledVector(new Vector3(0, 1, 0), 0.16)
          .addScaledVector(flow, -0.25)
          .normalize()
      case 'top':
        return new Vector3(0.0006, 1, 0.001).normalize()
      case 'up-current':
        return flow
          .clone()
          .negate()
          .addScaledVector(new Vector3(0, 1, 0), 0.12)
          .normalize()
      case 'underside':
        return new Vector3(0.5, -0.75, 0.6).normalize()
      case 'three-quarter':
        return homeDirection.clone()
    }
  }

  function view(name: ViewName | 'rig'): void {
    touched = false
    fitted = extent()
    moveTo(directionOf(name), easeMs)
  }

  const turns: Readonly<Record<string, (() => void) | undefined>> = {
    ArrowLeft: () => controls.rotateLeft(keyTurn),
    ArrowRight: () => controls.rotateLeft(-keyTurn),
    ArrowUp: () => controls.rotateUp(keyTurn),
    ArrowDown: () => controls.rotateUp(-keyTurn),
    '+': () => controls.dollyIn(0.88),
    '=': () => controls.dollyIn(0.88),
    '-': () => controls.dollyOut(0.88),
    Home: () => view('three-quarter'),
  }

  return {
    frame(points, anew) {
      if (points.length === 0) return
      outline = points
      box.setFromPoints([...points])
      const size = extent()
      const grown = size / fitted
      // A dragged size must be seen to grow, so the eye follows only when the pot leaves its frame.
      if (framed && !anew && grown > least && grown < most) return reach()
      fitted = size
      if (framed) {
        moveTo(camera.position.clone().sub(controls.target).normalize(), easeMs)
        return
      }
      framed = true
      reach()
      place(homeDirection)
    },
    view,
    current(direction) {
      flow.copy(direction)
    },
    key(name) {
      const turn = turns[name]
      if (!turn) return false
      move++
      touched = true
      turn()
      loop.invalidate()
      return true
    },
    resized() {
      if (framed && !touched) {
        const direction = camera.position.clone().sub(controls.target).normalize()
        place(direction)
      }
    },
    rest() {
      move++
      framed = touched = settling = false
      // What is left of a turn's swing goes with an update that does not damp it.
      controls.enableDamping = false
      controls.update()
      controls.enableDamping = !reducedMotion
    },
    dispose() {
      controls.dispose()
    },
  }
}
