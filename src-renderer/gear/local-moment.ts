import { localDay, localTime } from '@renderer/state/today'

/** A moment as a field for day and time shows it, by the clock of this machine. */
export function toLocalInput(at: string | number): string {
  const date = new Date(at)
  return Number.isNaN(date.getTime()) ? '' : `${localDay(date)}T${localTime(date)}`
}

/** The moment of such a field in UTC; undefined while it is not complete. */
export function fromLocalInput(text: string): string | undefined {
  const date = new Date(text)
  return text === '' || Number.isNaN(date.getTime()) ? undefined : date.toISOString()
}
