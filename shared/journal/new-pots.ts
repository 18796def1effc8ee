import type { InstalledPart } from '@shared/schema/gear'
import type { Pot } from '@shared/schema/pot'
import { err, ok, type Result } from '@shared/units/result'

export type FreshPart = Omit<InstalledPart, 'id'>

const mostAtOnce = 500

/**
 * Float numbers out of what people write: `1-40`, `3, 5, 8-12`, `A7`.
 *
 * @param text numbers and ranges, with commas or spaces between
 * @returns numbers in the order written, each once; an error that names the piece that cannot be read
 */
export function floatNumbers(text: string): Result<string[]> {
  const numbers = new Set<string>()
  for (const piece of text.split(/[\s,;]+/).filter((word) => word !== '')) {
    const [, from, to] = /^(\d{1,6})-(\d{1,6})$/.exec(piece) ?? []
    if (from === undefined || to === undefined) {
      if (piece.length > 12) return refused(`“${piece}” is longer than a float has room for.`)
      numbers.add(piece)
      continue
    }
    const [first, last] = [Number(from), Number(to)]
    if (last < first) return refused(`“${piece}” runs backwards.`)
    if (last - first >= mostAtOnce) return refused(`“${piece}” is more than ${mostAtOnce} pots at once.`)
    for (let number = first; number <= last; number++) numbers.add(String(number))
  }
  if (numbers.size === 0) return refused('Say which numbers the floats carry, as 1-40.')
  if (numbers.size > mostAtOnce) return refused(`These are more than ${mostAtOnce} pots at once.`)
  return ok([...numbers])
}

function refused(message: string): Result<never> {
  return err({ code: 'invalid', message, path: 'numbers' })
}

/**
 * The parts that wear of a pot of one design, as new.
 *
 * @param pot         the design
 * @param installedOn day they were put in, as `2026-05-01`
 * @returns parts in the order of an inspection; what the design leaves out is left out
 */
export function partsOfDesign(pot: Pot, installedOn: string): FreshPart[] {
  const parts: (FreshPart | undefined)[] = [
    pot.rope && {
      ...{ kind: 'rope', installedOn, material: pot.rope.material },
      ...{ diameterMm: pot.rope.diameterMm, lengthM: pot.rope.lengthM },
    },
    pot.netting && {
      ...{ kind: 'netting', installedOn, material: pot.netting.material },
      ...{ diameterMm: pot.netting.twineDiameterMm, barLengthMm: pot.netting.barLengthMm },
    },
    frameOf(pot, installedOn),
    pot.chafe && pot.chafe.kind !== 'none'
      ? { kind: 'chafe', installedOn, material: pot.chafe.kind, lengthM: baseRoundM(pot) }
      : undefined,
    baitHolderOf(pot, installedOn),
    releaseOf(pot, installedOn),
    pot.float && {
      kind: 'float',
      installedOn,
      material: pot.float.material,
      diameterMm: pot.float.diameterMm,
    },
    pot.marks?.tag && pot.marks.tag.fields.length + pot.marks.tag.text.length > 0
      ? { kind: 'tag', installedOn }
      : undefined,
    pot.doors && pot.doors.length > 0
      ? { kind: 'door-hook', installedOn, count: pot.doors.length }
      : undefined,
  ]
  return parts.filter((part) => part !== undefined)
}

/** A part like another, put in on a day: what is taken unless something is changed. */
export function likeNew(part: InstalledPart, installedOn: string): FreshPart {
  const fresh: FreshPart & { id?: string } = { ...part, installedOn }
  delete fresh.id
  return fresh
}

/** Length round the base, along which chafe gear lies [m], to the centimetre. */
function baseRoundM({ body }: Pot): number {
  const mm = body.shape === 'box' ? 2 * (body.lengthMm + body.widthMm) : Math.PI * body.baseDiameterMm
  return Math.round(mm / 10) / 100
}

/** The frame wears by its thinnest bar. */
function frameOf(pot: Pot, installedOn: string): FreshPart | undefined {
  const [first, ...rest] = pot.frame ?? []
  if (!first) return undefined
  const thinnest = rest.reduce((a, b) => (b.barDiameterMm < a.barDiameterMm ? b : a), first)
  return { kind: 'frame', installedOn, material: thinnest.material, diameterMm: thinnest.barDiameterMm }
}

function baitHolderOf(pot: Pot, installedOn: string): FreshPart | undefined {
  if (pot.bait?.holder === 'mesh-bag') return { kind: 'bait-bag', installedOn }
  if (pot.bait?.holder === 'wire-basket')
    return { kind: 'bait-basket', installedOn, material: 'wire-galvanised' }
  return undefined
}

function releaseOf({ release }: Pot, installedOn: string): FreshPart | undefined {
  if (!release || release.kind === 'none') return undefined
  return {
    ...{ kind: 'release-cord', installedOn },
    ...(release.material === undefined ? {} : { material: release.material }),
    ...(release.diameterMm === undefined ? {} : { diameterMm: release.diameterMm }),
  }
}
