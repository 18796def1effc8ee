import { withBaseRing } from '@shared/match/ring-needed'
import type { Pot } from '@shared/schema/pot'
import type { Water } from '@shared/schema/water'
import { starter } from './starter'
import type { Crew } from './crew'

/*
 * Two invented people on three invented waters in Washington. The tide and current stations are real ones of the
 * national service, so that the predictions are; no place is where a station is.
 */

const marks: Pot['marks'] = {
  float: {
    text: ['Ines Varga', '4 Ropewalk Lane, Alder Landing'],
    fields: ['first-name', 'last-name', 'address'],
  },
  letterHeightMm: 20,
  contrasting: true,
}
const floats: Pot['float'] = {
  shape: 'sphere',
  diameterMm: 200,
  massKg: 0.35,
  material: 'PVC',
  colours: ['red', 'white'],
  pattern: 'halves',
}
const ours = {
  marks,
  float: floats,
  release: { kind: 'cord-lid', material: 'cotton', diameterMm: 3 },
} as const

const creekPot: Pot = {
  ...starter('starter-compact'),
  ...ours,
  id: 'demo-creek-pot',
  name: 'Creek pot',
  rope: { material: 'PES', construction: '3-strand', diameterMm: 6, lengthM: 14 },
}
const soundPot: Pot = {
  ...withBaseRing(starter('starter-standard'), 14),
  ...ours,
  id: 'demo-sound-pot',
  name: 'Sound pot',
  rope: { material: 'PES', construction: '3-strand', diameterMm: 8, lengthM: 28 },
}
const channelPot: Pot = {
  ...starter('starter-heavy'),
  ...ours,
  id: 'demo-channel-pot',
  name: 'Channel pot',
  float: { ...floats, shape: 'bullet', diameterMm: 200, lengthMm: 400, massKg: 0.6, material: 'EVA' },
  rope: { material: 'lead-core', construction: 'braid', diameterMm: 8, lengthM: 42 },
}

const water = (own: Pick<Water, 'id' | 'name' | 'depthM'> & Partial<Water>): Water => ({
  format: 'potwright/water',
  version: 1,
  region: 'US-WA',
  zone: 'puget-sound',
  timeZone: 'America/Los_Angeles',
  salinityPsu: 29,
  temperatureC: 10,
  ...own,
})

export const northCrew: Crew = {
  units: 'imperial',
  designs: [soundPot, creekPot, channelPot],
  waters: [
    water({
      id: 'demo-otter-creek',
      name: 'Otter Creek mouth',
      depthM: 4,
      bottom: 'mud',
      tide: { source: 'station', id: 'noaa/9447883' },
      current: { source: 'rate', springMps: 0.35, neapMps: 0.2, lagH: 0 },
      notes: 'Invented for the demo. Sheltered; dries at the edges.',
    }),
    water({
      id: 'demo-lantern-channel',
      name: 'Lantern Channel',
      depthM: 16,
      bottom: 'gravel',
      tide: { source: 'station', id: 'noaa/9447854' },
      current: { source: 'station', id: 'noaa/PUG1617' },
      notes: 'Invented for the demo. Runs hard; set at slack.',
    }),
    water({
      id: 'demo-grey-roads',
      name: 'Grey Roads',
      depthM: 11,
      bottom: 'sand',
      tide: { source: 'station', id: 'noaa/9444900' },
      current: { source: 'station', id: 'noaa/PUG1622' },
      windMps: 7,
      waves: { heightM: 0.7, periodS: 4 },
      notes: 'Invented for the demo. Open to the west.',
    }),
  ],
  trip: {
    ...{ format: 'potwright/trip', version: 1, region: 'US-WA', zone: 'puget-sound' },
    ...{ people: 2, licences: 2, boat: true, pots: 4, tiedOff: false, attended: false, soakH: 20 },
    species: ['metacarcinus-magister'],
    stow: { lengthMm: 1900, widthMm: 1100, heightMm: 700, maxKg: 60 },
  },
  onBench: { pot: 'demo-sound-pot', water: 'demo-grey-roads' },
  owned: [
    ...['1', '2'].map((number) => ({ number, design: 'demo-creek-pot', water: 'demo-otter-creek' })),
    ...['3', '4', '5', '6'].map((number) => ({ number, design: 'demo-sound-pot', water: 'demo-grey-roads' })),
    ...['7', '8'].map((number) => ({ number, design: 'demo-channel-pot', water: 'demo-lantern-channel' })),
  ],
  prices: [
    { item: 'rope-pes-8mm', each: 0.6, per: 'metre' },
    { item: 'rope-pes-6mm', each: 0.45, per: 'metre' },
    { item: 'rope-lead-core-8mm', each: 1.4, per: 'metre' },
    { item: 'netting-pe-1-5mm-35mm-mesh', each: 22, per: 'panel' },
    { item: 'netting-pe-1-2mm-25mm-mesh', each: 18, per: 'panel' },
    { item: 'netting-pe-2mm-50mm-mesh', each: 26, per: 'panel' },
    { item: 'release-cord-cotton-3mm', each: 0.3, per: 'metre' },
    { item: 'chafe-rope-wrap', each: 1.1, per: 'metre' },
    { item: 'bait-bag', each: 3.5, per: 'piece' },
    { item: 'door-hook', each: 1.8, per: 'piece' },
    { item: 'float-pvc-200mm', each: 14, per: 'piece' },
  ],
}
