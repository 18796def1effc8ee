import type { Entrance } from '@shared/schema/pot'
import type { PartName } from '@shared/schema/check'
import { Vector3, type Object3D } from 'three'
import type { LabelNote, Notes } from './annotations'
import { driftOutcome } from './drift-pose'
import { failingParts } from './failing-parts'
import { entrancesBelow } from './haul-pose'
import { partWords } from './part-words'
import type { SceneGeometry } from './scene-geometry'
import type { SceneModel, SceneOptions } from './scene-model'

type Texts = Pick<SceneOptions, 'lengthText' | 'speedText'>

/** Where what stands around the pot is named; undefined while it is not there. */
export interface Surroundings {
  readonly currentAt: Vector3 | undefined
  readonly crabAt: Vector3 | undefined
}

// More marks than this hide the pot they point at; the cards list them all.
const mostMarks = 5

/**
 * Everything written over the picture, in places of the world. `frame` carries the pot's own frame as it is posed,
 * `standing` as it stood before it moved.
 */
export function notesOf(
  model: SceneModel,
  scene: SceneGeometry,
  frame: Object3D,
  standing: Object3D,
  around: Surroundings,
  edge: Vector3,
  texts: Texts,
): Notes {
  const world = (place: readonly number[]) => frame.localToWorld(new Vector3().fromArray(place))
  const labels: LabelNote[] = []
  if (model.mode === 'built' || model.mode === 'findings') labels.push(...failing(model, scene, world))
  if (model.mode === 'haul') labels.push(...hanging(model.pot.entrances ?? [], scene, world))
  if (model.mode === 'drift') labels.push(drifting(model, world(edge.toArray()), texts))
  if (model.mode === 'rig') labels.push(...rigged(scene, world))
  const { currentAt, crabAt } = around
  if (currentAt && model.mode !== 'rig' && model.currentMps) {
    labels.push({ at: currentAt, text: texts.speedText(model.currentMps), mark: 'none' })
  }
  if (crabAt && model.mode === 'built' && model.crabWidthMm) {
    labels.push({ at: crabAt, text: `Crab, ${texts.lengthText(model.crabWidthMm / 1000)}`, mark: 'none' })
  }
  const dimensions = scene.geometry.dimensions
    .filter(({ field }) => field === model.dimension)
    .map(({ from, to, valueM }) => ({ from: world(from), to: world(to), text: texts.lengthText(valueM) }))
  if (model.mode === 'rig' && model.line) {
    const { depthM } = model.line
    const foot = scene.line.at(-1) ?? new Vector3()
    dimensions.push({
      from: world([foot.x, foot.y, 0]),
      to: world([foot.x, foot.y, depthM]),
      text: texts.lengthText(depthM),
    })
  }
  const moved = model.mode === 'drift' && ['slides', 'tips'].includes(driftOutcome(model.check))
  const outlines = moved ? [footprint(scene).map((place) => standing.localToWorld(place))] : []
  return { labels, dimensions, outlines }
}

/** The ring the pot stood on, or the sides of its box. */
function footprint({ geometry }: SceneGeometry): Vector3[] {
  const ring = geometry.tubes.find(({ part, closed }) => part === 'base-ring' && closed)
  const { min, max } = geometry.bounds
  const corners = [min[0], min[1], 0, max[0], min[1], 0, max[0], max[1], 0, min[0], max[1], 0]
  const places = ring?.points ?? Float32Array.from(corners)
  return Array.from({ length: places.length / 3 }, (_, k) => new Vector3().fromArray(places, k * 3).setZ(0))
}

type ToWorld = (place: readonly number[]) => Vector3

function failing(model: SceneModel, { geometry }: SceneGeometry, world: ToWorld): LabelNote[] {
  const marks = failingParts(model.check).flatMap((part) => {
    const anchor = geometry.anchors[part] ?? geometry.anchors[standsIn[part] ?? part]
    return anchor ? [{ at: world(anchor), text: `${partWords[part]}: fails`, mark: 'fails' as const }] : []
  })
  return marks.slice(0, mostMarks)
}

/** Where a part that has no place of its own is pointed at. */
const standsIn: Partial<Record<PartName, PartName>> = { frame: 'base-ring', body: 'top-ring', marks: 'float' }

function hanging(entrances: readonly Entrance[], scene: SceneGeometry, world: ToWorld): LabelNote[] {
  const { min, max } = scene.geometry.bounds
  const middle = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2]
  return entrancesBelow(entrances, scene.hang).map((k) => {
    const entrance = entrances[k]
    const bearing = ((entrance?.bearingDeg ?? 0) * Math.PI) / 180
    const away = [Math.cos(bearing) * (max[0] - min[0]) * 0.5, -Math.sin(bearing) * (max[1] - min[1]) * 0.5]
    const height = ((entrance?.sillMm ?? 0) + (entrance?.heightMm ?? 0) / 2) / 1000
    const place = entrance?.onTop
      ? [middle[0] ?? 0, middle[1] ?? 0, max[2]]
      : [(middle[0] ?? 0) + (away[0] ?? 0), (middle[1] ?? 0) + (away[1] ?? 0), min[2] + height]
    return { at: world(place), text: 'Entrance below: crabs can drop out', mark: 'fails' as const }
  })
}

function drifting(model: SceneModel, at: Vector3, { speedText }: Texts): LabelNote {
  const outcome = driftOutcome(model.check)
  const speed = model.currentMps === undefined ? '' : ` at ${speedText(model.currentMps)}`
  const text = {
    stays: `Stays put${speed}`,
    slides: `Slides${speed}`,
    tips: `Tips over this edge${speed}`,
    unknown: 'Cannot tell whether it stays put',
  }[outcome]
  return { at, text, mark: outcome === 'slides' || outcome === 'tips' ? 'fails' : 'none' }
}

function rigged({ line }: SceneGeometry, world: ToWorld): LabelNote[] {
  const float = line[0]
  const pot = line.at(-1)
  return [
    ...(float ? [{ at: world(float.toArray()), text: 'Float', mark: 'none' as const }] : []),
    ...(pot ? [{ at: world(pot.toArray()), text: 'Pot', mark: 'none' as const }] : []),
  ]
}
