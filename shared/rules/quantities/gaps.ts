import type { EscapeGap, Pot } from '@shared/schema/pot'
import { known, missing, stated, type Facts, type Reader, type Reading } from '../facts'
import { angleApartDeg } from './bearing'

const ofGap =
  (read: (gap: EscapeGap, pot: Pot) => Reading): Reader =>
  ({ gap, pot }) => {
    if (!gap) throw new Error('an escape gap quantity was read outside an escape gap check')
    return read(gap, pot)
  }

const widthMm = (gap: EscapeGap) => (gap.shape === 'circle' ? gap.diameterMm : gap.widthMm)
const heightMm = (gap: EscapeGap) => (gap.shape === 'circle' ? gap.diameterMm : gap.heightMm)

function countPerChamber({ pot }: Facts): Reading {
  if (!pot.escapeGaps) return missing('the escape gaps')
  if (pot.chambers === undefined) return missing('how many chambers the pot has')
  const gaps = pot.escapeGaps
  if (pot.chambers === 1) return known(total(gaps))
  if (gaps.some((gap) => gap.chamber === undefined)) return missing('which chamber each escape gap is in')
  const perChamber = Array.from({ length: pot.chambers }, (_, index) =>
    total(gaps.filter((gap) => gap.chamber === index + 1)),
  )
  return known(Math.min(...perChamber))
}

const total = (gaps: readonly EscapeGap[]) => gaps.reduce((sum, gap) => sum + gap.count, 0)

// Opposite sides: bearings at least this far apart.
const OPPOSITE_DEG = 135

function onOppositeSides({ pot }: Facts): Reading {
  if (!pot.escapeGaps) return missing('the escape gaps')
  if (total(pot.escapeGaps) < 2) return known(false)
  const bearings = pot.escapeGaps.map((gap) => gap.bearingDeg)
  const stated = bearings.filter((bearing) => bearing !== undefined)
  const opposite = stated.some((a) => stated.some((b) => angleApartDeg(a, b) >= OPPOSITE_DEG))
  if (opposite) return known(true)
  const spread = pot.escapeGaps.some((gap) => gap.count > 1)
  return stated.length < bearings.length || spread
    ? missing('on which sides the escape gaps are')
    : known(false)
}

export const gapReaders = {
  'gaps.count': ({ pot }) => stated(pot.escapeGaps && total(pot.escapeGaps), 'the escape gaps'),
  'gaps.per-chamber': countPerChamber,
  'gaps.opposite': onOppositeSides,
  'gap.diameter': ofGap((gap) => known(Math.min(widthMm(gap), heightMm(gap)))),
  'gap.width': ofGap((gap) => known(widthMm(gap))),
  'gap.height': ofGap((gap) => known(heightMm(gap))),
  'gap.bottom-edge': ofGap((gap) => known(gap.bottomEdgeMm)),
  'gap.bottom-below-top': ofGap((gap, pot) => known(Math.max(0, pot.body.heightMm - gap.bottomEdgeMm))),
  'gap.in-upper-half': ofGap((gap, pot) =>
    known(gap.onTop === true || gap.bottomEdgeMm >= pot.body.heightMm / 2),
  ),
  'gap.on-top': ofGap((gap) => known(gap.onTop ?? false)),
  'gap.corner': ofGap((gap) => stated(gap.cornerMm, 'how far the escape gap is from a corner')),
  'gap.shape': ofGap((gap) => known(gap.shape)),
} satisfies Record<string, Reader>
