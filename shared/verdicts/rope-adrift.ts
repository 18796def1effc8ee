import { solveLine } from '@shared/physics/line/line'
import type { Finding } from '@shared/schema/check'
import type { Depths } from './depths'
import { sources } from './judging'
import { lineIn, type Prepared } from './prepared'

/** Floating rope that lies on the surface at slack low water catches propellers. Advice; the float still shows. */
export function ropeAdrift(prepared: Prepared, depths: Depths): Finding[] {
  const slack = lineIn(prepared, prepared.sets.middle, depths.lowM, 0)
  if (!slack || slack.ropeWetWeightNpm >= 0) return []
  const lying = solveLine(slack, 'rough')
  if (lying.state === 'failed' || lying.slackSurfaceM < 1) return []
  return [
    {
      rule: 'float:rope-on-surface',
      state: 'holds',
      part: 'rope',
      what: `At slack low water ${prepared.words.with(lying.slackSurfaceM, 'm')} of rope lie on the surface, where propellers catch them. Use sinking rope, or a weight on the rope.`,
      actual: lying.slackSurfaceM,
      limit: 0,
      margin: -lying.slackSurfaceM,
      unit: 'm',
      standing: 'advice',
      source: sources.line,
    },
  ]
}
