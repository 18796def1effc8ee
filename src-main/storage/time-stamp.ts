/** A moment as it stands in file names, in universal time: `20261205-074500`. Sorts by time. */
export function timeStamp(at: Date): string {
  const [day = '', time = ''] = at.toISOString().split('T')
  return `${day.replaceAll('-', '')}-${time.slice(0, 8).replaceAll(':', '')}`
}

/** The moment a `timeStamp` was made from, to the second, or undefined where the text is not one. */
export function fromTimeStamp(stamp: string): Date | undefined {
  const parts = /^(\d{4})(\d\d)(\d\d)-(\d\d)(\d\d)(\d\d)$/.exec(stamp)
  if (!parts) return undefined
  const [, year, month, day, hour, minute, second] = parts
  const at = new Date(`${year}-${month}-${day}T${hour}:${minute}:${second}Z`)
  return Number.isNaN(at.getTime()) ? undefined : at
}
