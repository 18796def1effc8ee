import type { InstalledPart } from '@shared/schema/gear'
import type { EventOf } from '@shared/schema/journal'
import { exposureAt } from './exposure'
import { moveOver, putOn, takeOff } from './fitting'
import type { GearEvent } from './fold'
import type { LockerState, PartState, PotState } from './locker-state'
import { odometer } from './odometer'
import { dayMs, passTime } from './passage'
import { problemWith } from './problem'

/** Applies what is done with parts, stock, prices and photos. Objections were heard before. */
export function applyGearEvent(state: LockerState, event: GearEvent): void {
  switch (event.kind) {
    case 'add-pots':
      return addPots(state, event)
    case 'inspect':
    case 'repair':
      return inspect(state, event)
    case 'replace':
      return replace(state, event)
    case 'swap-part':
      return swapPart(state, event)
    case 'photo':
      return addPhoto(state, event)
    case 'stock':
      state.stock[event.item] = event.counted ?? (state.stock[event.item] ?? 0) + (event.change ?? 0)
      return
    case 'price': {
      const { id, at, item, each, per, coilM, on, supplierNote } = event
      state.prices[item] = {
        ...{ id, at, item, each, per },
        ...(coilM === undefined ? {} : { coilM }),
        ...(on === undefined ? {} : { on }),
        ...(supplierNote === undefined ? {} : { supplierNote }),
      }
      return
    }
    case 'correct':
    case 'undo':
      // Already applied to their targets.
      return
  }
}

function addPots(state: LockerState, event: EventOf<'add-pots'>): void {
  for (const { pot: id, number, design, parts } of event.pots) {
    if (state.pots[id]) {
      state.problems.push(problemWith('pot-twice', event, `Pot ${number} was added twice; the first stands.`))
      continue
    }
    const pot: PotState = {
      ...{ id, number, design, status: 'ashore', addedAt: event.at, sinceMs: Date.parse(event.at) },
      ...{ storage: 'unstated', wetDays: 0, photos: [], parts: [], been: odometer() },
      caught: { kept: 0, undersized: 0, female: 0, other: 0 },
    }
    state.pots[id] = pot
    for (const part of parts) install(state, pot, part, event)
  }
}

function install(state: LockerState, pot: PotState, part: InstalledPart, event: GearEvent): void {
  if (state.parts[part.id]) {
    state.problems.push(
      problemWith('part-twice', event, `A part of pot ${pot.number} was put in twice; the first stands.`),
    )
    return
  }
  // Gear bought before it was written down was ashore until then, as far as anyone knows.
  const before = Math.max(0, Date.parse(event.at) - Date.parse(part.installedOn)) / dayMs
  const fitted: PartState = {
    part,
    pot: pot.id,
    status: 'fitted',
    carried: odometer(before),
    pot0: pot.been,
    inspections: [],
  }
  state.parts[part.id] = fitted
  putOn(fitted, pot)
}

/** A fitted part with its pot, brought up to a time. */
function fittedPart(
  state: LockerState,
  id: string,
  at: string,
): { part: PartState; pot: PotState } | undefined {
  const part = state.parts[id]
  const pot = part && state.pots[part.pot]
  if (!part || !pot) return undefined
  passTime(pot, Date.parse(at))
  return { part, pot }
}

function inspect(state: LockerState, event: EventOf<'inspect'> | EventOf<'repair'>): void {
  const fitted = fittedPart(state, event.part, event.at)
  if (!fitted) return
  const { part, pot } = fitted
  const found =
    event.kind === 'inspect'
      ? {
          ...(event.grade === undefined ? {} : { grade: event.grade }),
          ...(event.diameterLossPct === undefined ? {} : { diameterLossPct: event.diameterLossPct }),
          ...(event.brokenBars === undefined ? {} : { brokenBars: event.brokenBars }),
          ...(event.note === undefined ? {} : { note: event.note }),
        }
      : { brokenBars: event.brokenBars ?? 0, note: event.what }
  part.inspections.push({
    event: event.id,
    on: event.at,
    at: exposureAt(part, pot, Date.parse(event.at)),
    ...found,
  })
}

function replace(state: LockerState, event: EventOf<'replace'>): void {
  const fitted = fittedPart(state, event.part, event.at)
  if (!fitted) return
  const { part, pot } = fitted
  takeOff(part, pot, event.reason === 'failed' ? 'failed' : 'retired', event.at)
  install(state, pot, event.with, event)
}

/** Moves a part to another pot; a part of its kind there takes its place. */
function swapPart(state: LockerState, event: EventOf<'swap-part'>): void {
  const to = state.pots[event.to]
  const fitted = fittedPart(state, event.part, event.at)
  if (!to || !fitted || fitted.pot === to) return
  passTime(to, Date.parse(event.at))
  const { part, pot } = fitted
  const back = to.parts.map((id) => state.parts[id]).find((other) => other?.part.kind === part.part.kind)
  moveOver(part, pot, to)
  if (back) moveOver(back, to, pot)
}

function addPhoto(state: LockerState, event: EventOf<'photo'>): void {
  const pot = state.pots[event.pot]
  if (!pot) return
  pot.photos.push({
    ...{ file: event.file, event: event.id },
    ...(event.part === undefined ? {} : { part: event.part }),
    ...(event.caption === undefined ? {} : { caption: event.caption }),
  })
}
