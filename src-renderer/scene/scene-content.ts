import type { PartName } from '@shared/schema/check'
import { Box3, Group, Matrix4, Mesh, Quaternion, Vector3 } from 'three'
import type { Notes } from './annotations'
import { createCrab } from './crab'
import { createCurrentDrift } from './current-drift'
import { driftOutcome, driftPose, tippingEdge } from './drift-pose'
import { emphasisOf } from './part-emphasis'
import type { Palette } from './palette'
import { outlineOf } from './mesh-outline'
import { createPartMaterials } from './part-materials'
import { createPotParts } from './pot-parts'
import { flowOf, sceneGeometry, widthOf, type SceneGeometry } from './scene-geometry'
import type { SceneModel, SceneOptions } from './scene-model'
import { notesOf } from './scene-notes'
import { createSeabed } from './seabed'
import { castsShadow, createSoftShadow } from './soft-shadow'
import type { Stage } from './stage'
import { createWaterSurface } from './water-surface'

/** Everything in the picture: the pot and what surrounds it. */
export interface SceneContent {
  /** Brings the picture to a model; `fold` and `pose` run from 0 to 1 while a mode is entered. */
  show(model: SceneModel, fold: number, pose: number): void
  /** The group whose meshes can be picked, and what part each is. */
  readonly pickable: Group
  partOf(mesh: unknown): PartName | undefined
  emphasise(pointedAt: PartName | undefined): void
  colours(palette: Palette): void
  /** Points that have to stay in the picture. */
  outline(): Vector3[]
  readonly flow: Vector3
  notes(): Notes
  drift(deltaMs: number): void
  dispose(): void
}

const home = new Quaternion()

export function createSceneContent(
  stage: Stage,
  texts: Pick<SceneOptions, 'lengthText' | 'speedText'>,
): SceneContent {
  const materials = createPartMaterials(stage)
  const parts = createPotParts(materials)
  const crab = createCrab()
  const seabed = createSeabed()
  const surface = createWaterSurface()
  const drift = createCurrentDrift()
  const shadow = createSoftShadow(stage.renderer, stage.key, stage.screen)

  // The design has z up; three has y up.
  const upright = new Group()
  upright.rotation.x = -Math.PI / 2
  const posed = new Group()
  posed.matrixAutoUpdate = false
  posed.add(parts.group)
  upright.add(posed)
  const casters = new Group()
  casters.add(upright, crab.group)
  stage.scene.add(seabed.group, shadow.plane, casters, drift.group, surface.group)

  const flow = new Vector3(-1, 0, 0)
  let edge = new Vector3()
  let shown: { model: SceneModel; scene: SceneGeometry } | undefined
  let palette: Palette | undefined
  let castFrom = ''

  function setPose(model: SceneModel, scene: SceneGeometry, pose: number, potFlow: Vector3) {
    edge = tippingEdge(scene.geometry, potFlow)
    if (model.mode === 'haul') {
      const turn = home.clone().slerp(scene.hang, pose)
      posed.matrix = new Matrix4().makeRotationFromQuaternion(turn)
      posed.matrixWorldNeedsUpdate = true
      upright.position.y = 0
      casters.updateMatrixWorld(true)
      // Clear of the bottom by a third of its width, as it comes up.
      const low = new Box3().setFromObject(parts.group).min.y
      upright.position.y = pose * (widthOf(scene.geometry) / 3) - low * pose
    } else {
      posed.matrix =
        model.mode === 'drift' ? driftPose(driftOutcome(model.check), edge, potFlow, pose) : new Matrix4()
      upright.position.y = 0
    }
    posed.matrixWorldNeedsUpdate = true
    casters.updateMatrixWorld(true)
  }

  function setSurroundings(model: SceneModel, scene: SceneGeometry) {
    const radius = widthOf(scene.geometry) / 2
    const rig = model.mode === 'rig' ? model.line : undefined
    const offset = scene.line[0]?.clone().setZ(0).length() ?? 0
    const crabWidth = rig ? undefined : model.crabWidthMm
    const beside = radius * 1.1 + (crabWidth ?? 0) / 1500
    crab.stand(model.mode === 'haul' ? undefined : crabWidth, beside * 0.7, -beside * 0.86)
    const water = rig ? offset * 0.62 + rig.depthM * 0.25 + radius : radius * 2.9
    seabed.show(model.bottom, water)
    surface.show(rig?.depthM, water)
    for (const { group } of [seabed, surface]) {
      group.position.x = (flow.x * offset) / 2
      group.position.z = (flow.z * offset) / 2
    }
    const still = model.mode === 'haul' || model.mode === 'folded' || rig !== undefined
    drift.show(still ? 0 : (model.currentMps ?? 0), flow, radius, radius * 2.4)
    shadow.strength((palette?.shadow ?? 0.5) * (model.mode === 'haul' ? 0.45 : 1))
  }

  /** The shadow is drawn again only when what casts it took another shape or place. */
  function setShadow(reshaped: boolean) {
    const box = new Box3()
    casters.traverseVisible((each) => {
      if (each instanceof Mesh && castsShadow(each)) box.expandByObject(each)
    })
    if (box.isEmpty()) return
    const place = [
      ...posed.matrix.elements,
      upright.position.y,
      ...crab.group.position,
      crab.group.scale.x,
    ].join()
    if (!reshaped && place === castFrom) return
    castFrom = place
    shadow.cast(casters, box.getCenter(new Vector3()), box.getSize(new Vector3()).length() / 2)
  }

  return {
    flow,
    outline() {
      const points = [...parts.group.children, ...crab.group.children].flatMap((mesh) =>
        mesh instanceof Mesh && mesh.visible && mesh.parent?.visible ? outlineOf(mesh) : [],
      )
      const depth = shown?.scene.line.length ? shown.model.line?.depthM : undefined
      if (depth !== undefined) points.push(new Vector3(0, depth, 0))
      return points
    },
    pickable: parts.group,
    partOf: (mesh) => parts.partOf(mesh),
    show(model, fold, pose) {
      const scene = sceneGeometry(model, fold)
      const potFlow = flowOf(model)
      flow.set(potFlow.x, 0, -potFlow.y)
      const reshaped = parts.update(scene.items)
      shown = { model, scene }
      setPose(model, scene, pose, potFlow)
      setSurroundings(model, scene)
      setShadow(reshaped)
    },
    emphasise(pointedAt) {
      if (shown && palette) parts.emphasise(emphasisOf(shown.model, pointedAt, palette))
    },
    colours(next) {
      palette = next
      seabed.colours(next)
      surface.colours(next)
      drift.colours(next)
    },
    notes() {
      if (!shown) return { labels: [], dimensions: [], outlines: [] }
      const { model, scene } = shown
      return notesOf(
        model,
        scene,
        posed,
        upright,
        {
          currentAt: drift.group.visible ? drift.labelAt : undefined,
          crabAt: crab.group.visible ? crab.top() : undefined,
        },
        edge,
        texts,
      )
    },
    drift: (deltaMs) => {
      drift.step(deltaMs)
    },
    dispose() {
      for (const owned of [parts, materials, crab, seabed, surface, drift, shadow]) owned.dispose()
    },
  }
}
