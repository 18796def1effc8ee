import type { Trip } from '@shared/schema/trip'

/** Spaces to start from, of sizes that are common; each is then measured and changed. */
export const stowPresets: readonly { label: string; space: NonNullable<Trip['stow']> }[] = [
  { label: "Small boat's bow locker", space: { lengthMm: 1100, widthMm: 900, heightMm: 450, maxKg: 60 } },
  { label: 'Open deck of a small boat', space: { lengthMm: 2000, widthMm: 1400, heightMm: 900, maxKg: 150 } },
  { label: 'Car boot', space: { lengthMm: 1000, widthMm: 1000, heightMm: 500, maxKg: 80 } },
  { label: 'Kayak hatch', space: { lengthMm: 650, widthMm: 420, heightMm: 280, maxKg: 15 } },
]
