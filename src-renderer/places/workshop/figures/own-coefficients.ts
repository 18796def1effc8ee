import { coefficientsWith, defaultCoefficients, type CoefficientKey } from '@shared/physics/coefficients'
import { settings } from '@renderer/state/settings.svelte'

export type End = 'low' | 'mid' | 'high'
export const ends: readonly End[] = ['low', 'mid', 'high']

const own = () => settings.current.coefficients ?? {}

export const isOwn = (key: CoefficientKey) => own()[key] !== undefined

/** Keeps a value of the reader's own; one that is as shipped again is not kept. */
export function put(key: CoefficientKey, end: End, value: number): void {
  const row = coefficientsWith({ [key]: { ...own()[key], [end]: value } })[key]
  const shipped = defaultCoefficients[key]
  const changed = ends.some((one) => row[one] !== shipped[one])
  write(
    { ...own(), ...(changed ? { [key]: { low: row.low, mid: row.mid, high: row.high } } : {}) },
    changed ? [] : [key],
  )
}

/** Puts figures back as shipped; what is returned undoes it. */
export function putBack(keys: readonly CoefficientKey[]): () => void {
  const before = own()
  write(before, keys)
  return () => void settings.set({ coefficients: before })
}

function write(next: NonNullable<typeof settings.current.coefficients>, without: readonly string[]): void {
  const kept = Object.fromEntries(Object.entries(next).filter(([key]) => !without.includes(key)))
  void (Object.keys(kept).length === 0
    ? settings.set({}, ['coefficients'])
    : settings.set({ coefficients: kept }))
}
