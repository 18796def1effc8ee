import { withBaseRing } from '@shared/match/ring-needed'
import type { Pot } from '@shared/schema/pot'
import type { Water } from '@shared/schema/water'
import type { Crew } from './crew'
import { starter } from './starter'

/* Three invented people on two invented waters in Queensland, where no current station is: a range and a rate do. */

const marks: Pot['marks'] = {
  float: { text: ['QUILL'], fields: ['last-name'] },
  tag: { text: ['T. Quill', '19 Lamplighter Street, Pelican Flats'], fields: ['last-name', 'address'] },
}
const ours = {
  gearKind: 'pot',
  marks,
  escapeGaps: [{ shape: 'rectangle', widthMm: 120, heightMm: 50, count: 2, bottomEdgeMm: 0, bearingDeg: 45 }],
  float: {
    shape: 'sphere',
    diameterMm: 200,
    massKg: 0.35,
    material: 'PVC',
    colours: ['white'],
    pattern: 'solid',
  },
} satisfies Partial<Pot>

const creekPot: Pot = {
  ...withBaseRing(starter('starter-compact'), 10),
  ...ours,
  id: 'demo-mangrove-pot',
  name: 'Mangrove pot',
  rope: { material: 'PE', construction: '3-strand', diameterMm: 6, lengthM: 10 },
}
const bayPot: Pot = {
  ...withBaseRing(starter('starter-standard'), 14),
  ...ours,
  id: 'demo-bay-pot',
  name: 'Bay pot',
  rope: { material: 'PES', construction: '3-strand', diameterMm: 8, lengthM: 16 },
}

const water = (own: Pick<Water, 'id' | 'name' | 'depthM'> & Partial<Water>): Water => ({
  format: 'potwright/water',
  version: 1,
  region: 'AU-QLD',
  zone: 'tidal-waters',
  timeZone: 'Australia/Brisbane',
  salinityPsu: 34,
  temperatureC: 24,
  ...own,
})

export const southCrew: Crew = {
  units: 'metric',
  designs: [bayPot, creekPot],
  waters: [
    water({
      id: 'demo-stilt-creek',
      name: 'Stilt Creek',
      depthM: 2.5,
      bottom: 'mud',
      tide: { source: 'range', springM: 2.1, neapM: 1.1 },
      current: { source: 'rate', springMps: 0.6, neapMps: 0.35, lagH: 0.5, floodDeg: 210 },
      notes: 'Invented for the demo. Between mangroves; mud to the knee.',
    }),
    water({
      id: 'demo-pelican-bay',
      name: 'Pelican Bay',
      depthM: 6,
      bottom: 'silty-sand',
      tide: { source: 'range', springM: 2.1, neapM: 1.1 },
      current: { source: 'rate', springMps: 0.45, neapMps: 0.25, lagH: 0, floodDeg: 180 },
      windMps: 6,
      notes: 'Invented for the demo.',
    }),
  ],
  trip: {
    ...{ format: 'potwright/trip', version: 1, region: 'AU-QLD', zone: 'tidal-waters' },
    ...{ people: 3, boat: true, pots: 8, tiedOff: false, attended: false, soakH: 8 },
    species: ['scylla-serrata'],
    stow: { lengthMm: 1600, widthMm: 1000, heightMm: 600, maxKg: 80 },
  },
  onBench: { pot: 'demo-bay-pot', water: 'demo-pelican-bay' },
  owned: [
    ...['11', '12', '13', '14'].map((number) => ({
      number,
      design: 'demo-mangrove-pot',
      water: 'demo-stilt-creek',
    })),
    ...['21', '22', '23', '24'].map((number) => ({
      number,
      design: 'demo-bay-pot',
      water: 'demo-pelican-bay',
    })),
  ],
  prices: [
    { item: 'rope-pes-8mm', each: 1.1, per: 'metre' },
    { item: 'rope-pe-6mm', each: 0.7, per: 'metre' },
    { item: 'netting-pe-1-5mm-35mm-mesh', each: 32, per: 'panel' },
    { item: 'netting-pe-1-2mm-25mm-mesh', each: 28, per: 'panel' },
    { item: 'release-cord-cotton-3mm', each: 0.5, per: 'metre' },
    { item: 'chafe-rope-wrap', each: 1.8, per: 'metre' },
    { item: 'bait-bag', each: 5, per: 'piece' },
    { item: 'door-hook', each: 2.6, per: 'piece' },
    { item: 'float-pvc-200mm', each: 19, per: 'piece' },
  ],
}
