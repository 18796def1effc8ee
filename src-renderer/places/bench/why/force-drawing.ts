import type { Explanation, ForceArrow } from '@shared/verdicts/explain'

/** An arrow on the sheet, in pixels, with its label's place. */
export interface DrawnArrow {
  readonly name: ForceArrow['name']
  readonly label: string
  readonly sizeN: number
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
  readonly text: readonly [x: number, y: number, anchor: 'start' | 'middle' | 'end']
}

export const sheet = { width: 600, height: 290, bed: 170, middle: 290 }
const POT_PX = 250
const POT_TALL_PX = 120
const LONGEST_PX = 112
const SHORTEST_PX = 10

/** Width and height of the pot's outline on the sheet, in the proportion of the design. */
export function potOnSheet(widthM: number, heightM: number): { width: number; height: number } {
  const scale = Math.min(POT_PX / widthM, POT_TALL_PX / heightM)
  return { width: widthM * scale, height: Math.max(16, heightM * scale) }
}

/**
 * Lays the forces about the pot's outline so that none covers another: drag comes in from up-current, the rope leaves
 * at its hold, weight and lift act at the middle, the bottom from below.
 */
export function drawForces(
  why: Explanation,
  pot: { width: number; height: number },
  heightM: number,
): DrawnArrow[] {
  const forces = merged(why.arrows)
  const strongest = Math.max(...forces.map((force) => force.sizeN), 1)
  const length = (sizeN: number) => Math.max(SHORTEST_PX, (sizeN / strongest) * LONGEST_PX)
  const left = sheet.middle - pot.width / 2
  const right = sheet.middle + pot.width / 2
  const level = (z: number) => sheet.bed - Math.min(1.15, z / Math.max(heightM, 0.01)) * pot.height
  return forces.flatMap((force): DrawnArrow[] => {
    const { name, label, sizeN } = force
    const px = length(sizeN)
    const arrow = (from: DrawnArrow['from'], to: DrawnArrow['to'], text: DrawnArrow['text']) => [
      { name, label, sizeN, from, to, text },
    ]
    switch (name) {
      case 'drag': {
        const y = level(force.at[1])
        return arrow([left - px - 6, y], [left - 6, y], [left - 6, y - 12, 'end'])
      }
      case 'rope': {
        const y = level(force.at[1])
        const [fx, fz] = force.forceN
        const to = [right + 4 + (fx / sizeN) * px, y - (fz / sizeN) * px] as const
        return arrow([right + 4, y], to, [to[0] + 6, to[1] + 4, 'start'])
      }
      case 'weight':
        return arrow(
          [sheet.middle, sheet.bed - 4 - px],
          [sheet.middle, sheet.bed - 4],
          [sheet.middle + 8, sheet.bed + 4 - px, 'start'],
        )
      case 'lift':
        return arrow(
          [sheet.middle - 40, level(heightM)],
          [sheet.middle - 40, level(heightM) - px],
          [sheet.middle - 32, level(heightM) - px + 4, 'start'],
        )
      case 'ground':
        return arrow(
          [sheet.middle + 40, sheet.bed + 6 + px],
          [sheet.middle + 40, sheet.bed + 6],
          [sheet.middle + 50, sheet.bed + 40, 'start'],
        )
      case 'grip':
        return arrow(
          [sheet.middle - 20, sheet.bed + 14],
          [sheet.middle - 20 - px, sheet.bed + 14],
          [sheet.middle - 20, sheet.bed + 34, 'end'],
        )
    }
  })
}

/** All drag as one arrow at the height where it acts; its parts are told by the bars beside. */
function merged(arrows: readonly ForceArrow[]): ForceArrow[] {
  const drags = arrows.filter((arrow) => arrow.name === 'drag')
  const rest = arrows.filter((arrow) => arrow.name !== 'drag' && arrow.sizeN > 0.05)
  const sizeN = drags.reduce((sum, drag) => sum + drag.sizeN, 0)
  if (sizeN === 0) return rest
  const height = drags.reduce((sum, drag) => sum + drag.sizeN * drag.at[1], 0) / sizeN
  return [{ name: 'drag', label: 'Drag', forceN: [sizeN, 0], sizeN, at: [0, height] }, ...rest]
}
