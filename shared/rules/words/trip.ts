import type { QuantityWords } from './quantity-words'

export const tripWords = {
  'trip.people': { label: 'The number of people' },
  'trip.licences': { label: 'The number of licences' },
  'trip.boat': { label: 'Fishing from a boat', less: 'Fish from the shore.', more: 'Fish from a boat.' },
  'trip.tied-off': { label: 'Gear tied to something fixed', less: 'Set it on a float.', more: 'Tie it off.' },
  'trip.attended': { label: 'Gear that someone stays with', more: 'Stay with the gear.' },
  'trip.soak': { label: 'The soak', less: 'Haul sooner.', more: 'Leave it longer.' },
  'trip.spacing': { label: 'The distance to other gear', less: 'Set closer.', more: 'Set further apart.' },
  'trip.holds': { label: 'The permits and standings held', more: 'Get the permit first.' },
  'trip.species': {
    label: 'The species fished for',
    less: 'Fish for something else.',
    more: 'Fish for something else.',
  },
  'water.width': {
    label: 'The width of the waterway',
    less: 'Set in narrower water.',
    more: 'Set in wider water.',
  },
  'water.depth': { label: 'The depth', less: 'Set in shallower water.', more: 'Set in deeper water.' },
} satisfies Record<string, QuantityWords>
