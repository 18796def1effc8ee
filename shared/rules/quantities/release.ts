import type { Release } from '@shared/schema/pot'
import { absent, known, missing, stated, type Reader, type Reading } from '../facts'

/** Reads a release that is fitted; a pot that has none has nothing to measure. */
const ofRelease =
  (read: (release: Release, potHeightMm: number) => Reading): Reader =>
  ({ pot }) => {
    if (!pot.release) return missing('the release')
    return pot.release.kind === 'none' ? absent : read(pot.release, pot.body.heightMm)
  }

const side = (pick: (...sides: number[]) => number) =>
  ofRelease(({ openingWidthMm, openingHeightMm }) =>
    openingWidthMm === undefined || openingHeightMm === undefined
      ? missing('the size of the release opening')
      : known(pick(openingWidthMm, openingHeightMm)),
  )

// A cord lid, panel or door is one loop or strand of cord, unless it says otherwise.
export const releaseReaders = {
  'release.kind': ({ pot }) => stated(pot.release?.kind, 'the release'),
  'release.material': ofRelease((release) => stated(release.material, "the release cord's material")),
  'release.cord-diameter': ofRelease((release) => stated(release.diameterMm, "the release cord's thickness")),
  'release.threads': ofRelease((release) => stated(release.threads, "the release cord's thread count")),
  'release.loops': ofRelease((release) => known(release.loops ?? 1)),
  'release.opening-width': ofRelease((release) =>
    stated(release.openingWidthMm, "the release opening's width"),
  ),
  'release.opening-height': ofRelease((release) =>
    stated(release.openingHeightMm, "the release opening's height"),
  ),
  'release.opening-shorter-side': side(Math.min),
  'release.opening-longer-side': side(Math.max),
  'release.bottom-edge': ofRelease((release) => stated(release.bottomEdgeMm, 'where the release opening is')),
  // A lid opens the whole top; a panel or a door is where it was cut.
  'release.in-upper-half': ofRelease((release, potHeightMm) => {
    if (release.kind === 'cord-lid') return known(true)
    if (release.bottomEdgeMm === undefined) return missing('where the release opening is')
    return known(release.bottomEdgeMm >= potHeightMm / 2)
  }),
} satisfies Record<string, Reader>
