/** A moment as a field for day and time shows it, by the clock of this machine. */
export function toLocalInput(at: string | number): string {
  const date = new Date(at)
  if (Number.isNaN(date.getTime())) return ''
  const two = (part: number) => String(part).padStart(2, '0')
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}T${two(date.getHours())}:${two(date.getMinutes())}`
}

/** The moment of such a field in UTC; undefined while it is not complete. */
export function fromLocalInput(text: string): string | undefined {
  const date = new Date(text)
  return text === '' || Number.isNaN(date.getTime()) ? undefined : date.toISOString()
}
