import { massProperties } from '@shared/design/mass-properties'
import { conditionsAt } from '@shared/tides/conditions'
import { explain } from '@shared/verdicts/explain'
import type { SceneMode, SceneModel } from '@renderer/scene/scene-model'
import { figures } from '@renderer/state/figures.svelte'
import type { BenchState } from '@renderer/state/bench.svelte'
import { markedPart, type PartId } from './part-ids'

/** What the view is to show of the bench as it stands; the rope is solved only where it is drawn. */
export function sceneFor(bench: BenchState, mode: SceneMode, open: PartId): SceneModel {
  const { pot, trip, water, predicted } = bench
  const conditions = water && conditionsAt(water, predicted)
  const why = mode === 'rig' && conditions ? explain({ pot, trip, conditions, ...figures.tables }) : undefined
  return {
    pot,
    mode,
    check: bench.check,
    bottom: water?.bottom,
    currentMps: conditions && 'surfaceCurrentMps' in conditions ? conditions.surfaceCurrentMps : undefined,
    line: why?.rope && { shape: why.rope.shape, depthM: why.depthM },
    centreOfGravityM:
      mode === 'haul' ? massProperties(pot, figures.tables.materials).centreOfGravity : undefined,
    editing: markedPart(open),
    dimension: bench.dimension,
  }
}
