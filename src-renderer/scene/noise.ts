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

/** One direction of a square: for each of `size` places the lattice cells on either side, and how far between. */
function crossings(size: number, cells: number) {
  return Array.from({ length: size }, (_, k) => {
    const at = (k * cells) / size
    const from = Math.floor(at)
    const way = at - from
    return { from: from % cells, to: (from + 1) % cells, share: way ** 2 * (3 - 2 * way) }
  })
}

/**
 * A square of `size` by `size` smooth values 0 to 1, row by row: several octaves of lattice noise, the first with
 * `cells` cells a side, each next half as strong and twice as fine.
 */
export function noiseSquare(size: number, cells: number, octaves: number, seed: number): Float32Array {
  const square = new Float32Array(size * size)
  const total = 2 - 2 ** (1 - octaves)
  for (let octave = 0; octave < octaves; octave++) {
    const side = cells * 2 ** octave
    const lattice = Float32Array.from({ length: side * side }, createRandom(seed + octave * 101))
    const strength = 0.5 ** octave / total
    const ways = crossings(size, side)
    ways.forEach((down, y) => {
      const above = lattice.subarray(down.from * side, (down.from + 1) * side)
      const below = lattice.subarray(down.to * side, (down.to + 1) * side)
      const row = square.subarray(y * size, (y + 1) * size)
      ways.forEach(({ from, to, share }, x) => {
        const top = mix(above[from], above[to], share)
        const bottom = mix(below[from], below[to], share)
        row[x] = (row[x] ?? 0) + strength * mix(top, bottom, down.share)
      })
    })
  }
  return square
}

const mix = (from = 0, to = 0, share = 0) => from + (to - from) * share
