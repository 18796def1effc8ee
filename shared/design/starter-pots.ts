import type { Pot } from '@shared/schema/pot'

/* Starting shapes of our own. Sizes are common ones of the trade; none is anybody's product. */

const compact: Pot = {
  format: 'potwright/pot',
  version: 1,
  id: 'starter-compact',
  name: 'Compact folding round',
  gearKind: 'pot',
  body: { shape: 'round', baseDiameterMm: 600, topDiameterMm: 560, heightMm: 260, folds: true, feet: 0 },
  frame: [
    { role: 'base-ring', material: 'steel-galvanised', barDiameterMm: 8 },
    { role: 'top-ring', material: 'steel-galvanised', barDiameterMm: 6 },
    { role: 'strut', material: 'steel-galvanised', barDiameterMm: 6, count: 4 },
  ],
  ballast: [{ material: 'lead', massKg: 0.5, heightMm: 10 }],
  netting: { material: 'PE', twineDiameterMm: 1.2, barLengthMm: 25, knotted: true, hangingRatio: 0.7071 },
  entrances: [
    { kind: 'funnel', widthMm: 220, heightMm: 110, bearingDeg: 0, sillMm: 40 },
    { kind: 'funnel', widthMm: 220, heightMm: 110, bearingDeg: 180, sillMm: 40 },
  ],
  doors: [{ where: 'top', purpose: 'bait-and-catch', bearingDeg: 90 }],
  chafe: { kind: 'none' },
  bait: { holder: 'mesh-bag', massKg: 0.4, at: 'centre', heightMm: 90 },
  escapeGaps: [{ shape: 'circle', diameterMm: 108, count: 2, bottomEdgeMm: 140, bearingDeg: 45 }],
  release: { kind: 'cord-lid', material: 'cotton', diameterMm: 3 },
  bridle: { legs: 2, bearingDeg: 90, attach: 'top-ring' },
  rope: { material: 'PES', construction: '3-strand', diameterMm: 6, lengthM: 18 },
  float: {
    shape: 'sphere',
    diameterMm: 150,
    massKg: 0.2,
    material: 'PVC',
    colours: ['red', 'white'],
    pattern: 'halves',
  },
  catchKg: 2,
}

const standard: Pot = {
  ...compact,
  id: 'starter-standard',
  name: 'Standard round',
  body: { shape: 'round', baseDiameterMm: 900, topDiameterMm: 860, heightMm: 320, folds: true, feet: 0 },
  frame: [
    { role: 'base-ring', material: 'steel-galvanised', barDiameterMm: 12 },
    { role: 'top-ring', material: 'steel-galvanised', barDiameterMm: 10 },
    { role: 'strut', material: 'steel-galvanised', barDiameterMm: 8, count: 4 },
  ],
  ballast: [{ material: 'lead', massKg: 1, heightMm: 10 }],
  netting: { material: 'PE', twineDiameterMm: 1.5, barLengthMm: 35, knotted: true, hangingRatio: 0.7071 },
  entrances: [
    { kind: 'funnel', widthMm: 300, heightMm: 130, bearingDeg: 0, sillMm: 40 },
    { kind: 'funnel', widthMm: 300, heightMm: 130, bearingDeg: 180, sillMm: 40 },
  ],
  chafe: { kind: 'rope-wrap', thicknessMm: 6, on: ['base-ring'] },
  bait: { holder: 'mesh-bag', massKg: 0.5, at: 'centre', heightMm: 110 },
  escapeGaps: [{ shape: 'circle', diameterMm: 108, count: 2, bottomEdgeMm: 190, bearingDeg: 45 }],
  rope: { material: 'PES', construction: '3-strand', diameterMm: 8, lengthM: 22 },
  float: {
    shape: 'sphere',
    diameterMm: 200,
    massKg: 0.35,
    material: 'PVC',
    colours: ['red', 'white'],
    pattern: 'halves',
  },
  catchKg: 3,
}

const heavy: Pot = {
  ...standard,
  id: 'starter-heavy',
  name: 'Heavy channel round',
  body: { shape: 'round', baseDiameterMm: 960, topDiameterMm: 880, heightMm: 320, folds: false, feet: 0 },
  frame: [
    { role: 'base-ring', material: 'steel-galvanised', barDiameterMm: 20 },
    { role: 'middle-ring', material: 'steel-galvanised', barDiameterMm: 10 },
    { role: 'top-ring', material: 'steel-galvanised', barDiameterMm: 12 },
    { role: 'strut', material: 'steel-galvanised', barDiameterMm: 10, count: 6 },
    { role: 'cross-bar', material: 'steel-galvanised', barDiameterMm: 16, count: 2 },
  ],
  ballast: [{ material: 'lead', massKg: 2, heightMm: 10 }],
  netting: { material: 'PE', twineDiameterMm: 2, barLengthMm: 50, knotted: true, hangingRatio: 0.7071 },
  entrances: [0, 120, 240].map((bearingDeg) => ({
    kind: 'funnel' as const,
    widthMm: 280,
    heightMm: 130,
    bearingDeg,
    sillMm: 20,
  })),
  doors: [{ where: 'top', purpose: 'bait-and-catch', bearingDeg: 60 }],
  chafe: { kind: 'rope-wrap', thicknessMm: 8, on: ['base-ring'] },
  bait: { holder: 'wire-basket', massKg: 0.8, at: 'centre', heightMm: 100 },
  escapeGaps: [{ shape: 'circle', diameterMm: 110, count: 2, bottomEdgeMm: 195, bearingDeg: 30 }],
  bridle: { legs: 3, bearingDeg: 60, attach: 'top-ring' },
  rope: { material: 'lead-core', construction: 'braid', diameterMm: 8, lengthM: 30 },
  float: {
    shape: 'bullet',
    diameterMm: 200,
    lengthMm: 400,
    massKg: 0.6,
    material: 'EVA',
    colours: ['orange'],
    pattern: 'solid',
  },
  catchKg: 6,
}

const box: Pot = {
  ...standard,
  id: 'starter-box',
  name: 'Box with one-way doors',
  body: { shape: 'box', lengthMm: 609, widthMm: 609, heightMm: 300, folds: true, feet: 0 },
  frame: [
    { role: 'base-ring', material: 'steel-coated', barDiameterMm: 10 },
    { role: 'top-ring', material: 'steel-coated', barDiameterMm: 8 },
    { role: 'strut', material: 'steel-coated', barDiameterMm: 6, count: 4 },
  ],
  ballast: [{ material: 'lead', massKg: 1, heightMm: 10 }],
  netting: { material: 'wire-coated', twineDiameterMm: 2.2, barLengthMm: 50, knotted: false },
  entrances: [
    { kind: 'one-way', widthMm: 260, heightMm: 120, bearingDeg: 0, sillMm: 30 },
    { kind: 'one-way', widthMm: 260, heightMm: 120, bearingDeg: 180, sillMm: 30 },
  ],
  chafe: { kind: 'none' },
  bait: { holder: 'wire-basket', massKg: 0.5, at: 'centre', heightMm: 90 },
  escapeGaps: [{ shape: 'circle', diameterMm: 110, count: 2, bottomEdgeMm: 165, bearingDeg: 270 }],
  bridle: { legs: 2, bearingDeg: 90, attach: 'top-ring' },
  rope: { material: 'PES', construction: '3-strand', diameterMm: 8, lengthM: 20 },
}

const cone: Pot = {
  ...standard,
  id: 'starter-cone',
  name: 'Cone with top entrance',
  body: { shape: 'cone', baseDiameterMm: 800, topDiameterMm: 420, heightMm: 400, folds: false, feet: 0 },
  frame: [
    { role: 'base-ring', material: 'steel-galvanised', barDiameterMm: 16 },
    { role: 'middle-ring', material: 'steel-galvanised', barDiameterMm: 8 },
    { role: 'top-ring', material: 'steel-galvanised', barDiameterMm: 8 },
    { role: 'strut', material: 'steel-galvanised', barDiameterMm: 8, count: 6 },
  ],
  netting: { material: 'PE', twineDiameterMm: 1.8, barLengthMm: 40, knotted: true, hangingRatio: 0.7071 },
  entrances: [
    { kind: 'funnel', widthMm: 260, heightMm: 260, bearingDeg: 0, sillMm: 0, onTop: true, depthMm: 180 },
  ],
  doors: [{ where: 'base', purpose: 'bait-and-catch', bearingDeg: 90 }],
  chafe: { kind: 'hose', thicknessMm: 4, on: ['base-ring'] },
  bait: { holder: 'mesh-bag', massKg: 0.5, at: 'centre', heightMm: 110 },
  escapeGaps: [{ shape: 'circle', diameterMm: 108, count: 2, bottomEdgeMm: 60, bearingDeg: 45 }],
  release: { kind: 'cord-panel', material: 'jute', diameterMm: 3, openingWidthMm: 120, openingHeightMm: 120 },
  bridle: { legs: 3, bearingDeg: 60, attach: 'top-ring' },
}

/** The five starting shapes, smallest first. */
export const starterPots: readonly Pot[] = [compact, standard, heavy, box, cone]
