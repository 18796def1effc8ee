import type { HaulEntry, LockerState, PotState, RunState, SetEntry } from './locker-state'

// Made once: to make one for every comparison takes longer than to sort.
const numeric = new Intl.Collator('en', { numeric: true })

/** Order of float numbers: by number where they are numbers, else by text. */
export function compareNumbers(a: string, b: string): number {
  return numeric.compare(a, b)
}

/** Pots of a run that are still down, in the order in which they were set. */
export function stillDown(state: LockerState, run: RunState): PotState[] {
  const seen = new Set<string>()
  const down: PotState[] = []
  // The last setting of a pot counts where it was moved within the run.
  for (const { pot: id } of run.sets.toReversed()) {
    const pot = state.pots[id]
    if (!pot || seen.has(id)) continue
    seen.add(id)
    if (pot.status === 'in-water' && pot.run === run.id) down.push(pot)
  }
  return down.toReversed()
}

/** Hauls of a run with the place in the string of the setting that each ended; a float may be set again later. */
function hauledPlaces(run: RunState): { readonly haul: HaulEntry; readonly place: number }[] {
  const settings = new Map<string, { at: string; place: number }[]>()
  run.sets.forEach(({ pot, at }, place) => {
    const own = settings.get(pot)
    if (own) own.push({ at, place })
    else settings.set(pot, [{ at, place }])
  })
  return run.hauls.map((haul) => ({
    haul,
    // Set again at the moment it came up, it stands further on in the string; the haul ended the one before.
    place: (settings.get(haul.pot) ?? []).findLast((set) => set.at < haul.at)?.place ?? -1,
  }))
}

/** A float as it was set on a string, with the haul that ended it. */
export interface StringFloat {
  readonly set: SetEntry
  readonly haul?: HaulEntry
}

/** Every setting of a run in order, each with the haul that ended it where it is up. */
export function stringOf(run: RunState): StringFloat[] {
  const ended = new Map(hauledPlaces(run).map(({ haul, place }) => [place, haul]))
  return run.sets.map((set, place) => {
    const haul = ended.get(place)
    return haul ? { set, haul } : { set }
  })
}

/** The next float to come up to: the first of the run still down after the last hauled, or the first of all. */
export function nextExpected(state: LockerState, run: RunState): PotState | undefined {
  const down = stillDown(state, run)
  const from = hauledPlaces(run).at(-1)?.place ?? -1
  const place = new Map(run.sets.map(({ pot }, index) => [pot, index]))
  return down.find((pot) => (place.get(pot.id) ?? -1) > from) ?? down[0]
}

/** Pots of a run that were passed by: still down though one set after them was hauled since. */
function skipped(state: LockerState, run: RunState): PotState[] {
  const down = stillDown(state, run)
  if (down.length === 0) return []
  const lastSet = new Map(run.sets.map((set, index) => [set.pot, { index, at: set.at }]))
  // The furthest place hauled at or after each haul, so that each pot is one look and not a walk through all hauls.
  const reached: { at: string; furthest: number }[] = []
  for (const { haul, place } of hauledPlaces(run).toReversed())
    reached.push({ at: haul.at, furthest: Math.max(reached.at(-1)?.furthest ?? -1, place) })
  return down.filter((pot) => {
    const own = lastSet.get(pot.id)
    if (!own) return false
    const since = pot.seenAt !== undefined && pot.seenAt > own.at ? pot.seenAt : own.at
    const last = reached.findLast(({ at }) => at > since)
    return last !== undefined && last.furthest > own.index
  })
}

/** Pots passed by in any run, until they are hauled, found or given up; by number. */
export function missingFloats(state: LockerState): string[] {
  const open = new Set<string>()
  for (const pot of Object.values(state.pots))
    if (pot.status === 'in-water' && pot.run !== undefined) open.add(pot.run)
  return [...open]
    .flatMap((id) => (state.runs[id] ? skipped(state, state.runs[id]) : []))
    .sort((a, b) => compareNumbers(a.number, b.number))
    .map((pot) => pot.id)
}

/** The float to set next: the lowest number ashore above the last one set, else the lowest of all ashore. */
export function nextToSet(state: LockerState, run: RunState | undefined): PotState | undefined {
  const ashore = Object.values(state.pots)
    .filter((pot) => pot.status === 'ashore')
    .sort((a, b) => compareNumbers(a.number, b.number))
  const last = run?.sets.at(-1)
  const lastNumber = last && state.pots[last.pot]?.number
  return (
    (lastNumber === undefined
      ? undefined
      : ashore.find((pot) => compareNumbers(pot.number, lastNumber) > 0)) ?? ashore[0]
  )
}

/** Whether most of a haul was undersized, so that the pot is better moved a little before it is set again. */
export function moveBeforeSetting({ caught }: HaulEntry): boolean {
  const all = caught.kept + caught.undersized + caught.female
  return caught.undersized > 0 && caught.undersized > all / 2
}
