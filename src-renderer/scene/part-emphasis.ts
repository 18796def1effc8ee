import type { PartName } from '@shared/schema/check'
import { failingParts } from './failing-parts'
import { covers } from './part-cover'
import type { Emphasis } from './part-materials'
import type { Palette } from './palette'
import type { SceneModel } from './scene-model'
import { wearColour } from './wear-colours'

/** How each part stands out: by what is being edited or pointed at, by its findings, or by its wear. */
export function emphasisOf(
  model: SceneModel,
  pointedAt: PartName | undefined,
  palette: Palette,
): (part: PartName) => Emphasis {
  const failing = failingParts(model.check)
  return (part) => {
    const lit = pointedAt !== undefined && covers(pointedAt, part)
    const edited = model.editing !== undefined && covers(model.editing, part)
    const glow = lit || edited ? { glow: palette.accent, glowStrength: lit ? 0.55 : 0.3 } : {}
    if (model.mode === 'wear') return { tint: wearColour(model.wear?.[part]), ...glow }
    if (model.mode === 'findings' && failing.length > 0) {
      const fails = failing.some((said) => covers(said, part))
      return { tint: fails ? palette.fails : palette.quiet, ...glow }
    }
    return glow
  }
}
