import type { PotBody } from '@shared/schema/pot'
import { known, missing, stated, type Reader } from '../facts'

/** Outside measures of a pot's body [mm]: a round one is as long and as wide as its widest ring. */
function outside(body: PotBody): { length: number; width: number; height: number } {
  if (body.shape === 'box')
    return {
      length: Math.max(body.lengthMm, body.widthMm),
      width: Math.min(body.lengthMm, body.widthMm),
      height: body.heightMm,
    }
  const widest = Math.max(body.baseDiameterMm, body.topDiameterMm)
  return { length: widest, width: widest, height: body.heightMm }
}

/**
 * Volume inside a pot's outer faces.
 *
 * Box l·w·h; round, cone and dome as a truncated cone π·h·(D² + D·d + d²)/12 (a dome is a little more).
 *
 * @param body the pot's body [mm]
 * @returns volume [L]
 * @source geometry of the frustum
 */
function bodyVolumeL(body: PotBody): number {
  if (body.shape === 'box') return (body.lengthMm * body.widthMm * body.heightMm) / 1e6
  const [base, top] = [body.baseDiameterMm, body.topDiameterMm]
  return (Math.PI * body.heightMm * (base ** 2 + base * top + top ** 2)) / 12 / 1e6
}

/** Area inside the frame on the ground [m²]. */
function baseAreaM2(body: PotBody): number {
  if (body.shape === 'box') return (body.lengthMm * body.widthMm) / 1e6
  return (Math.PI * Math.max(body.baseDiameterMm, body.topDiameterMm) ** 2) / 4 / 1e6
}

/** Widest measure across seen from above [mm]: a ring's diameter, or a box corner to corner. */
function widestMm(body: PotBody): number {
  if (body.shape === 'box') return Math.hypot(body.lengthMm, body.widthMm)
  return Math.max(body.baseDiameterMm, body.topDiameterMm)
}

const rings: readonly string[] = ['base-ring', 'middle-ring', 'top-ring']

/** Members of the frame that are, or are not, rings; a member without a count is one. */
const members =
  (areRings: boolean): Reader =>
  ({ pot }) =>
    stated(
      pot.frame
        ?.filter((member) => rings.includes(member.role) === areRings)
        .reduce((sum, member) => sum + (member.count ?? 1), 0),
      'the frame',
    )

export const bodyReaders = {
  'frame.thinnest-bar': ({ pot }) =>
    pot.frame && pot.frame.length > 0
      ? known(Math.min(...pot.frame.map((member) => member.barDiameterMm)))
      : missing('the frame'),
  'frame.rings': members(true),
  'frame.uprights': members(false),
  'body.shape': ({ pot }) => known(pot.body.shape),
  'body.length': ({ pot }) => known(outside(pot.body).length),
  'body.width': ({ pot }) => known(outside(pot.body).width),
  'body.height': ({ pot }) => known(pot.body.heightMm),
  'body.diameter': ({ pot }) => known(widestMm(pot.body)),
  'body.longest-side': ({ pot }) => known(Math.max(...Object.values(outside(pot.body)))),
  'body.volume': ({ pot }) => known(bodyVolumeL(pot.body)),
  'body.base-area': ({ pot }) => known(baseAreaM2(pot.body)),
  'body.folds-flat': ({ pot }) => known(pot.body.folds),
  'body.chambers': ({ pot }) => stated(pot.chambers, 'how many chambers the pot has'),
} satisfies Record<string, Reader>
