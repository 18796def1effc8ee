import { foldedSize, type FoldedSize } from '@shared/design/folded-size'
import { mm } from '@shared/design/si'
import { stowFit } from '@shared/design/stow-fit'
import type { Finding, Verdict } from '@shared/schema/check'
import { cannotTell, sources, verdictOf } from './judging'
import type { Prepared } from './prepared'

/**
 * Whether the pots of the trip fit the space and the load given, each with its rope, float and bait.
 *
 * @returns verdict with the figures `foldedMm`, `massKg`, `fitCount`; cannot tell without the space
 * @source shared/design/stow-fit
 */
export function stows(prepared: Prepared): Verdict {
  const { input, mass } = prepared
  const size = foldedSize(input.pot)
  const foldedMm = [size.lengthM, size.widthM, size.heightM].map((metres) => Math.round(metres * 1000))
  const weighed = input.pot.measuredMassKg !== undefined || mass.missing.length === 0
  const massKg = weighed ? mass.carriedKg : undefined
  const space = input.trip?.stow
  if (!space)
    return verdictOf([cannotTell('stows:space', 'whether it stows', 'the space for gear', 'trip')], {
      foldedMm,
      massKg,
    })
  const fit = stowFit(size, massKg ?? 0, {
    lengthM: mm(space.lengthMm),
    widthM: mm(space.widthMm),
    heightM: mm(space.heightMm),
    maxKg: space.maxKg,
  })
  const wanted = Math.max(1, input.trip?.pots ?? 1)
  const findings = [sizeFinding(prepared, size, fit.bySize, wanted)]
  findings.push(
    massKg === undefined
      ? cannotTell('stows:load', 'whether the load is too heavy', 'the weight of the pot', 'trip')
      : loadFinding(prepared, massKg, space.maxKg, wanted),
  )
  return verdictOf(findings, { foldedMm, massKg, fitCount: massKg === undefined ? fit.bySize : fit.count })
}

const pots = (count: number) => (count === 1 ? '1 pot' : `${count} pots`)

function sizeFinding({ words }: Prepared, size: FoldedSize, fits: number, wanted: number): Finding {
  const how = size.folds ? 'Folded' : 'As it stands'
  const high = words.with(size.heightM * 1000, 'mm')
  const holds = fits >= wanted
  return {
    rule: 'stows:space',
    state: holds ? 'holds' : 'fails',
    part: 'trip',
    what: holds
      ? `${how} it is ${high} high: the space holds ${pots(fits)}.`
      : fits === 0
        ? `${how} it is ${words.range(size.widthM * 1000, size.lengthM * 1000, 'mm')} across and ${high} high: it does not fit the space.`
        : `${how} it is ${high} high: the space holds ${pots(fits)}, and ${wanted} are to go.`,
    actual: wanted,
    limit: fits,
    margin: fits - wanted,
    unit: 'pots',
    standing: 'engineering',
    source: sources.size,
  }
}

function loadFinding({ words }: Prepared, massKg: number, maxKg: number, wanted: number): Finding {
  const load = wanted * massKg
  return {
    rule: 'stows:load',
    state: load <= maxKg ? 'holds' : 'fails',
    part: 'trip',
    what:
      load <= maxKg
        ? `${pots(wanted)} with rope, float and bait weigh ${words.with(load, 'kg')} of the ${words.bare(maxKg, 'kg')} allowed.`
        : `${pots(wanted)} with rope, float and bait weigh ${words.with(load, 'kg')}; ${words.bare(maxKg, 'kg')} is allowed.`,
    actual: load,
    limit: maxKg,
    margin: maxKg - load,
    unit: 'kg',
    standing: 'engineering',
    source: sources.size,
  }
}
