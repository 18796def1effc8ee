import type { Entrance } from '@shared/schema/pot'
import { absent, known, missing, stated, type Facts, type Reader, type Reading } from '../facts'
import { angleApartDeg } from './bearing'

/** Reads the entrance that an item check is at; the pack reader refuses such a quantity anywhere else. */
const ofEntrance =
  (read: (entrance: Entrance) => Reading): Reader =>
  ({ entrance }) => {
    if (!entrance) throw new Error('an entrance quantity was read outside an entrance check')
    return read(entrance)
  }

const side = (pick: (...sides: number[]) => number) =>
  ofEntrance((entrance) => known(pick(entrance.widthMm, entrance.heightMm)))

/** What an animal must pass: the frame where one is fitted, else the entrance itself. */
const throat = (pick: (...sides: number[]) => number) =>
  ofEntrance((entrance) => {
    const frame = entrance.excluder
    const opening = pick(entrance.widthMm, entrance.heightMm)
    if (frame === undefined) return missing('whether a turtle frame is fitted in the entrance')
    return known(frame === 'none' ? opening : Math.min(opening, pick(frame.widthMm, frame.heightMm)))
  })

// Within 30° of a side entrance a bait holder hung on the wall stands in its way.
const IN_THE_WAY_DEG = 30

function baitBlocksEntrance({ pot }: Facts): Reading {
  if (!pot.bait) return missing('where the bait holder hangs')
  if (!pot.entrances) return missing('the entrances')
  const { at } = pot.bait
  if (at === 'top') return known(pot.entrances.some((entrance) => entrance.onTop === true))
  if (at === 'centre') return known(false)
  return missing('whether the bait holder on the side is clear of the entrances')
}

/** The pull comes on the side between two entrances; over one, the catch spills. */
function haulOverEntrance({ pot }: Facts): Reading {
  if (!pot.bridle) return missing('where the rope is tied')
  if (!pot.entrances) return missing('the entrances')
  const { bearingDeg } = pot.bridle
  return known(
    pot.entrances.some(
      (entrance) => !entrance.onTop && angleApartDeg(entrance.bearingDeg, bearingDeg) < IN_THE_WAY_DEG,
    ),
  )
}

export const openingReaders = {
  'entrances.count': ({ pot }) => stated(pot.entrances?.length, 'the entrances'),
  'entrances.over-haul-point': haulOverEntrance,
  'entrance.width': ofEntrance((entrance) => known(entrance.widthMm)),
  'entrance.height': ofEntrance((entrance) => known(entrance.heightMm)),
  'entrance.shorter-side': side(Math.min),
  'entrance.longer-side': side(Math.max),
  'entrance.perimeter': ofEntrance(({ widthMm, heightMm }) => known(2 * (widthMm + heightMm))),
  'entrance.aspect': ofEntrance(({ widthMm, heightMm }) => known(widthMm / heightMm)),
  'entrance.depth': ofEntrance((entrance) => stated(entrance.depthMm, "the funnel's depth into the pot")),
  'entrance.on-top': ofEntrance((entrance) => known(entrance.onTop ?? false)),
  'entrance.excluder-fitted': ofEntrance(({ excluder }) =>
    excluder === undefined
      ? missing('whether a turtle frame is fitted in the entrance')
      : known(excluder !== 'none'),
  ),
  'entrance.throat-height': throat(Math.min),
  'entrance.throat-width': throat(Math.max),
  'bait.blocks-entrance': baitBlocksEntrance,
  'bait.holder': ({ pot }) => (pot.bait ? known(pot.bait.holder) : absent),
} satisfies Record<string, Reader>
