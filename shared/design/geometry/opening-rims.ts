import type { Pot } from '@shared/schema/pot'
import type { PotShape } from '../shape'
import { mm } from '../si'
import { pointsOf } from './curves'
import { openingLoop } from './entrance-lines'
import { lookOfCord } from './looks'
import type { Opening } from './openings'
import type { Look, Tube } from './pot-geometry'

interface Rim {
  readonly look: Look
  readonly radiusM: number
}

/** Rims of doors, escape gaps and the release opening, and the cord that holds a lid or a door. */
export function openingRims(pot: Pot, drawn: PotShape, press: number, openings: readonly Opening[]): Tube[] {
  const rims: Record<Exclude<Opening['part'], 'entrances'>, Rim> = {
    doors: { look: 'steel-galvanised', radiusM: mm(2.5) },
    'escape-gaps': { look: 'plastic', radiusM: mm(4) },
    release: { look: pot.release ? lookOfCord(pot.release) : 'cord', radiusM: cordRadius(pot) },
  }
  const tubes = openings.flatMap((opening): Tube[] => {
    if (opening.part === 'entrances') return []
    const rim = rims[opening.part]
    return [
      {
        part: opening.part,
        index: opening.index,
        ...rim,
        points: pointsOf(openingLoop(opening, drawn, press)),
        closed: true,
      },
    ]
  })
  const held = openings.find((opening) => opening.part === 'doors')
  if (held && holdsDoor(pot)) tubes.push(cordLoop(pot, held, drawn, press))
  return tubes
}

const cordRadius = (pot: Pot) => mm(pot.release?.diameterMm ?? 3) / 2

const holdsDoor = (pot: Pot) => pot.release?.kind === 'cord-lid' || pot.release?.kind === 'cord-door'

/** A few turns of cord at the free edge of the door that it holds. */
function cordLoop(pot: Pot, door: Opening, drawn: PotShape, press: number): Tube {
  const edge = openingLoop(door, drawn, press)
  const [x, y, z] = edge[Math.floor((edge.length * 5) / 8)] ?? [0, 0, drawn.heightM]
  const turns = 3
  const steps = turns * 10
  return {
    part: 'release',
    look: pot.release ? lookOfCord(pot.release) : 'cord',
    radiusM: cordRadius(pot),
    points: pointsOf(
      Array.from({ length: steps + 1 }, (_, i) => {
        const roll = (2 * Math.PI * i) / 10
        return [
          x + mm(10) * Math.cos(roll),
          y + (cordRadius(pot) * 2 * i) / 10 - cordRadius(pot) * turns,
          z + mm(10) * Math.sin(roll),
        ] as const
      }),
    ),
    closed: false,
  }
}
