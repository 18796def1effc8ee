/* Seeded noise that repeats at its edges, for drawn textures: the same picture on every machine and run. */

export function createRandom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** Smooth values 0 to 1 over the unit square, `cells` lattice cells a side, wrapping at the edges. */
function lattice(cells: number, seed: number): (u: number, v: number) => number {
  const random = createRandom(seed)
  const values = Float32Array.from({ length: cells * cells }, random)
  const at = (x: number, y: number) => values[(y % cells) * cells + (x % cells)] ?? 0
  return (u, v) => {
    const x = u * cells
    const y = v * cells
    const x0 = Math.floor(x)
    const y0 = Math.floor(y)
    const fx = (x - x0) ** 2 * (3 - 2 * (x - x0))
    const fy = (y - y0) ** 2 * (3 - 2 * (y - y0))
    const top = at(x0, y0) * (1 - fx) + at(x0 + 1, y0) * fx
    const bottom = at(x0, y0 + 1) * (1 - fx) + at(x0 + 1, y0 + 1) * fx
    return top * (1 - fy) + bottom * fy
  }
}

/** Several octaves of lattice noise, each half as strong and twice as fine as the last. */
export function createNoise(cells: number, octaves: number, seed: number): (u: number, v: number) => number {
  const layers = Array.from({ length: octaves }, (_, k) => lattice(cells * 2 ** k, seed + k * 101))
  const total = 2 - 2 ** (1 - octaves)
  return (u, v) => layers.reduce((sum, layer, k) => sum + layer(u, v) * 0.5 ** k, 0) / total
}
