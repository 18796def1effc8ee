import type { PanelCut } from '@shared/design/cut-list'
import { reader } from '@renderer/ui/reader.svelte'

export const cutWords = {
  bill: 'What it is made of',
  bars: 'Bars to cut',
  panels: 'Netting to cut',
  part: 'Part',
  quantity: 'How much',
  mass: 'Mass',
  bar: 'Bar',
  diameter: 'Diameter',
  pieces: 'Pieces',
  each: 'Length each',
  bentTo: 'Bent to, inside',
  panel: 'Panel',
  shape: 'Shape, as hung',
  meshes: 'Meshes',
  total: (mass: string) => `All parts together ${mass} dry, without bait and catch.`,
  save: 'Save as a table (CSV)',
  fileName: (name: string) => `${name}, parts.csv`,
  unknown: 'not known',
  pieceCount: (count: number) => (count === 1 ? '1 piece' : `${count} pieces`),
} as const

const m = (value: number) => reader.say(value, 'm')

/** The outline of a panel in words, so that it can be marked out. */
export function panelShapeText({ shape }: PanelCut): string {
  switch (shape.kind) {
    case 'strip':
      return `strip ${m(shape.lengthM)} by ${m(shape.widthM)}`
    case 'disc':
      return `disc ${m(shape.diameterM)} across`
    case 'sector':
      return `sector, radii ${m(shape.innerRadiusM)} and ${m(shape.outerRadiusM)}, ${reader.digits(shape.angleDeg)}°`
    case 'trapezium':
      return `${m(shape.longM)} tapering to ${m(shape.shortM)}, ${m(shape.depthM)} deep`
  }
}
