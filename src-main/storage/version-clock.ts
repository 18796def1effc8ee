/** How many times each machine has saved a document, as far as the version at hand knows. */
export type VersionClock = Readonly<Record<string, number>>

/** Whether one version was made knowing another: `after` and `before` are, `apart` means neither knew the other. */
export type Order = 'same' | 'after' | 'before' | 'apart'

/** How version `a` stands to version `b`. */
export function compareClocks(a: VersionClock, b: VersionClock): Order {
  const machines = new Set([...Object.keys(a), ...Object.keys(b)])
  let ahead = false
  let behind = false
  for (const machine of machines) {
    const difference = (a[machine] ?? 0) - (b[machine] ?? 0)
    if (difference > 0) ahead = true
    if (difference < 0) behind = true
  }
  if (ahead && behind) return 'apart'
  if (ahead) return 'after'
  return behind ? 'before' : 'same'
}

/** The least clock that comes after or equals every one given. */
export function mergeClocks(clocks: readonly VersionClock[]): VersionClock {
  const merged: Record<string, number> = {}
  for (const clock of clocks)
    for (const [machine, count] of Object.entries(clock))
      merged[machine] = Math.max(merged[machine] ?? 0, count)
  return merged
}

/** The clock of the next version that a machine saves on top of the ones it has seen. */
export function nextClock(machine: string, seen: readonly VersionClock[]): VersionClock {
  const merged = mergeClocks(seen)
  return { ...merged, [machine]: (merged[machine] ?? 0) + 1 }
}
