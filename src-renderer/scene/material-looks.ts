import type { Look } from '@shared/design/geometry/pot-geometry'

/* What each material reads as under neutral light. */

export interface LookSpec {
  readonly colour: string
  readonly metalness: number
  readonly roughness: number
  /** Surface drawn over the colour. */
  readonly grain?: 'spangle' | 'lay' | 'wood' | 'pitted' | 'bag'
  /** Gleam of thin twine of this look. */
  readonly shine?: number
}

export const looks: Readonly<Record<Look, LookSpec>> = {
  'steel-galvanised': { colour: '#c9d0d4', metalness: 0.55, roughness: 0.45, grain: 'spangle' },
  'steel-stainless': { colour: '#d3d7da', metalness: 0.95, roughness: 0.24 },
  'steel-coated': { colour: '#2c4a44', metalness: 0, roughness: 0.42 },
  'steel-black': { colour: '#3a3c3f', metalness: 0.65, roughness: 0.6, grain: 'pitted' },
  aluminium: { colour: '#d9dcde', metalness: 0.9, roughness: 0.36 },
  plastic: { colour: '#3b4750', metalness: 0, roughness: 0.5 },
  wood: { colour: '#b0845a', metalness: 0, roughness: 0.8, grain: 'wood' },
  lead: { colour: '#71767c', metalness: 0.45, roughness: 0.62, grain: 'pitted' },
  concrete: { colour: '#a3a09a', metalness: 0, roughness: 0.96, grain: 'pitted' },
  twine: { colour: '#101315', metalness: 0, roughness: 0.55, shine: 0.1 },
  'wire-galvanised': { colour: '#9aa3a9', metalness: 0.8, roughness: 0.4, shine: 0.3 },
  'wire-coated': { colour: '#1c4a3c', metalness: 0, roughness: 0.45, shine: 0.12 },
  rope: { colour: '#f5822e', metalness: 0, roughness: 0.72, grain: 'lay', shine: 0.06 },
  'rope-sinking': { colour: '#4d6a58', metalness: 0, roughness: 0.78, grain: 'lay', shine: 0.04 },
  hose: { colour: '#33383c', metalness: 0, roughness: 0.58 },
  cord: { colour: '#d9cca6', metalness: 0, roughness: 0.9, grain: 'lay', shine: 0.02 },
  elastic: { colour: '#1d1f22', metalness: 0, roughness: 0.7 },
  bait: { colour: '#b98a78', metalness: 0, roughness: 0.55, grain: 'pitted' },
  tag: { colour: '#f0cf45', metalness: 0, roughness: 0.5 },
}
