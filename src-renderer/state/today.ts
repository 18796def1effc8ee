const two = (part: number) => String(part).padStart(2, '0')

/** The calendar day of a moment by the clock of this machine, as 2026-12-05. */
export const localDay = (at: Date) => `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`

/** Its time of day, as 07:45. */
export const localTime = (at: Date) => `${two(at.getHours())}:${two(at.getMinutes())}`

export const today = () => localDay(new Date())
