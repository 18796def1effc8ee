import fc from 'fast-check'

/** Numbers for tests, evenly spread: doubles drawn by their bits would be next to nothing more often than not. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.noBias(fc.integer({ min: 0, max: 1_000_000 })).map((step) => min + ((max - min) * step) / 1_000_000)
