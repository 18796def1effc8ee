import type { FloatBody } from '@shared/physics/float/float-body'
import type { Float } from '@shared/schema/pot'
import { mm } from './si'

/** Drag coefficients of floats, by shape; the middle ones where only buoyancy matters. */
export interface FloatDrag {
  readonly sphere: number
  readonly cylinder: number
  readonly awash: number
}

const middleDrag: FloatDrag = { sphere: 0.5, cylinder: 0.8, awash: 0.2 }

/** A design's float as the water meets it, in metres. */
export function floatBodyOf(float: Float, drag: FloatDrag = middleDrag): FloatBody {
  const common = { diameterM: mm(float.diameterMm), massKg: float.massKg, cdAwash: drag.awash }
  return float.shape === 'sphere'
    ? { shape: 'sphere', ...common, cd: drag.sphere }
    : { shape: float.shape, lengthM: mm(float.lengthMm), ...common, cd: drag.cylinder }
}
