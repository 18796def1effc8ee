import type { Point } from './pot-geometry'

/** Collects straight segments in one growing array. */
export class SegmentWriter {
  #data = new Float32Array(6 * 512)
  #used = 0

  add(a: Point, b: Point): void {
    if (this.#used + 6 > this.#data.length) this.#grow()
    this.#data[this.#used++] = a[0]
    this.#data[this.#used++] = a[1]
    this.#data[this.#used++] = a[2]
    this.#data[this.#used++] = b[0]
    this.#data[this.#used++] = b[1]
    this.#data[this.#used++] = b[2]
  }

  finish(): Float32Array {
    return this.#data.slice(0, this.#used)
  }

  #grow(): void {
    const larger = new Float32Array(this.#data.length * 2)
    larger.set(this.#data)
    this.#data = larger
  }
}
