import type { Float, Pot } from '@shared/schema/pot'
import { absent, known, missing, stated, type Facts, type Reader, type Reading } from '../facts'
import { floatVolumeL, freeboardMm, hungMassKg } from './freeboard'

const ofFloat =
  (read: (float: Float) => Reading): Reader =>
  ({ pot }) =>
    pot.float ? read(pot.float) : missing('the float')

type MarkerFloat = Exclude<NonNullable<Pot['markerFloat']>, 'none'>

const ofMarker =
  (read: (marker: MarkerFloat) => Reading): Reader =>
  ({ pot }) => {
    if (pot.markerFloat === undefined) return missing('the marker float')
    return pot.markerFloat === 'none' ? absent : read(pot.markerFloat)
  }

const lengthMm = (float: Float) => (float.shape === 'sphere' ? float.diameterMm : float.lengthMm)

function freeboard({ pot, water }: Facts): Reading {
  if (!pot.float) return missing('the float')
  if (!pot.rope) return missing('the rope that hangs from the float')
  const hung = hungMassKg(pot.rope, water?.depthM)
  if (hung === undefined) return missing('the mass of the lead-core rope')
  return known(freeboardMm(pot.float, hung))
}

export const floatReaders = {
  'float.shape': ofFloat((float) => known(float.shape)),
  'float.smallest-side': ofFloat((float) => known(Math.min(float.diameterMm, lengthMm(float)))),
  'float.diameter': ofFloat((float) => known(float.diameterMm)),
  'float.length': ofFloat((float) => known(lengthMm(float))),
  'float.volume': ofFloat((float) => known(floatVolumeL(float))),
  'float.freeboard': freeboard,
  'float.colours': ofFloat((float) => known(float.colours)),
  'float.pattern': ofFloat((float) => known(float.pattern)),
  'float.stripe': ofFloat((float) =>
    float.pattern === 'stripe' ? stated(float.stripeMm, "the width of the float's stripe") : absent,
  ),
  'float.material': ofFloat((float) => known(float.material)),
  'float.purpose-made': ofFloat((float) => known(float.purposeMade ?? true)),
  'float.reflective': ofFloat((float) => stated(float.reflective, 'whether the float reflects light')),
  'marker-float.fitted': ({ pot }) =>
    pot.markerFloat === undefined
      ? missing('whether there is a marker float')
      : known(pot.markerFloat !== 'none'),
  'marker-float.diameter': ofMarker((marker) => known(marker.diameterMm)),
  'marker-float.length': ofMarker((marker) => known(marker.lengthMm)),
  'marker-float.colours': ofMarker((marker) => known(marker.colours)),
} satisfies Record<string, Reader>
