import type { SceneMode, SceneModel } from '@renderer/scene/scene-model'
import type { BenchState } from '@renderer/state/bench.svelte'
import { conditionsAt } from '@shared/tides/conditions'
import { markedPart, type PartId } from './part-ids'

/** What the view is to show of the bench as it stands. */
export function sceneFor(bench: BenchState, mode: SceneMode, open: PartId): SceneModel {
  const conditions = bench.water && conditionsAt(bench.water)
  return {
    pot: bench.pot,
    mode,
    check: bench.check,
    bottom: bench.water?.bottom,
    currentMps: conditions && 'surfaceCurrentMps' in conditions ? conditions.surfaceCurrentMps : undefined,
    editing: markedPart(open),
    dimension: bench.dimension,
  }
}
