/** A 32-bit hash of lists of numbers, to tell whether a part's geometry has changed. */
export function hashOf(...lists: readonly ArrayLike<number>[]): number {
  let hash = 0x811c9dc5
  for (const list of lists) {
    const floats = list instanceof Float32Array ? list : Float32Array.from(list)
    const bits = new Uint32Array(floats.buffer, floats.byteOffset, floats.length)
    for (const word of bits) hash = Math.imul(hash ^ word, 0x01000193)
    hash = Math.imul(hash ^ bits.length, 0x01000193)
  }
  return hash >>> 0
}
