const bluffBodies = {
  'cube-face-on': 1.06,
  'square-plate': 1.17,
  disc: 1.17,
  'short-cylinder-end-on': 0.91,
  'hemisphere-cup-to-flow': 1.4,
  'hemisphere-dome-to-flow': 0.4,
} as const

export type BluffBody = keyof typeof bluffBodies

/**
 * Drag coefficient of a bluff body with sharp separation, on its frontal area [-]; little changed by speed.
 *
 * @source Hoerner, Fluid-Dynamic Drag, 1965; White, Fluid Mechanics, Table 7.3 (from memory)
 */
export const bluffDrag = (body: BluffBody): number => bluffBodies[body]
