import type { Netting, Pot, Release, Rope } from '@shared/schema/pot'
import type { Look } from './pot-geometry'

const frameLooks: Readonly<Record<string, Look>> = {
  'steel-galvanised': 'steel-galvanised',
  'steel-stainless': 'steel-stainless',
  'steel-coated': 'steel-coated',
  'steel-black': 'steel-black',
  'cast-iron': 'steel-black',
  zinc: 'steel-galvanised',
  aluminium: 'aluminium',
  'wood-hardwood': 'wood',
  pvc: 'plastic',
  pe: 'plastic',
  lead: 'lead',
  concrete: 'concrete',
  stone: 'concrete',
}

/** How a frame or ballast material reads; one the user added reads as plain steel. */
export const lookOfMaterial = (material: string): Look => frameLooks[material] ?? 'steel-black'

export const lookOfNetting = (netting: Netting): Look =>
  netting.material === 'wire-galvanised' || netting.material === 'wire-coated' ? netting.material : 'twine'

export const lookOfRope = (rope: Rope | undefined): Look =>
  rope && (rope.material === 'PES' || rope.material === 'PA' || rope.material === 'lead-core')
    ? 'rope-sinking'
    : 'rope'

export const lookOfChafe = (pot: Pot): Look => (pot.chafe?.kind === 'hose' ? 'hose' : 'rope')

export const lookOfCord = (release: Release): Look => (release.material === 'synthetic' ? 'elastic' : 'cord')
