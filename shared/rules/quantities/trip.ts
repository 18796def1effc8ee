import { stated, type Reader } from '../facts'

const metresToMm = (metres: number | undefined) => (metres === undefined ? undefined : metres * 1000)

export const tripReaders = {
  'trip.people': ({ trip }) => stated(trip?.people, 'how many people go'),
  'trip.licences': ({ trip }) => stated(trip?.licences, 'how many licences there are'),
  'trip.boat': ({ trip }) => stated(trip?.boat, 'whether a boat is used'),
  'trip.tied-off': ({ trip }) => stated(trip?.tiedOff, 'whether the gear is tied to something fixed'),
  'trip.attended': ({ trip }) => stated(trip?.attended, 'whether someone stays with the gear'),
  'trip.soak': ({ trip }) => stated(trip?.soakH, 'how long the gear soaks'),
  'trip.spacing': ({ trip }) => stated(metresToMm(trip?.spacingM), 'the distance to other gear'),
  'trip.holds': ({ trip }) => stated(trip?.holds, 'which permits the crew has'),
  'trip.species': ({ trip }) => stated(trip?.species, 'which species is fished for'),
  'water.width': ({ water }) => stated(metresToMm(water?.widthM), 'the width of the waterway'),
  'water.depth': ({ water }) => stated(metresToMm(water?.depthM), 'the depth'),
} satisfies Record<string, Reader>
