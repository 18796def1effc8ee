const keptOfToday = 3
const keptInAll = 10

/**
 * Which backups stay: the newest three of today, the newest of each earlier day, ten in all.
 *
 * @param moments when each was made, in any order
 * @param now     the moment of the decision; a backup from a clock that was ahead counts as today's
 * @returns the moments to keep, newest first
 */
export function backupsToKeep(moments: readonly Date[], now: Date): Date[] {
  const today = dayOf(now)
  const newestFirst = [...moments].sort((a, b) => b.getTime() - a.getTime())
  const ofToday = newestFirst.filter((at) => dayOf(at) >= today).slice(0, keptOfToday)
  const earlier = new Map<string, Date>()
  for (const at of newestFirst) if (dayOf(at) < today && !earlier.has(dayOf(at))) earlier.set(dayOf(at), at)
  return [...ofToday, ...earlier.values()].slice(0, keptInAll)
}

export const dayOf = (at: Date) => at.toISOString().slice(0, 10)
