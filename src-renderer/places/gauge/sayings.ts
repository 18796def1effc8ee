import { containerMeasures } from '@shared/rules/container-measures'
import { printedLimit } from '@shared/rules/printed'
import type { RulePack } from '@shared/schema/rule-pack'
import type { BagLimit, SizeLimit, Species } from '@shared/schema/rule-species'
import { sayDayOfYear } from '@renderer/ui/calendar-day'
import { reader } from '@renderer/ui/reader.svelte'
import { gaugeWords as w } from './words'

/** What people call a species, to stand at the head of a line. */
export const crabName = ({ commonNames, scientificName }: Pick<Species, 'commonNames' | 'scientificName'>) =>
  capital(commonNames[0] ?? scientificName)

/** What may be kept of a species, in short: sizes, numbers, sexes, season. */
export function sayCatch(species: Species, pack: RulePack): string {
  const known = [
    ...species.sizes.map((size) => saySize(size, pack)),
    ...species.bags.map((bag) => sayBag(bag, pack)),
    ...(species.sexRule ? [species.sexRule] : []),
    ...(species.seasons ? [`Kept only ${times(species.seasons)}.`] : []),
  ]
  const places = species.zones ? `${sentence(namesOf(species.zones, pack))} ` : ''
  return `${places}${known.length > 0 ? known.join(' ') : w.nothingKnown}`
}

/** "Males at least 6 1/4 in (159 mm), in Puget Sound." */
export function saySize(size: SizeLimit, pack: RulePack): string {
  const who = size.sex === undefined ? '' : `${size.sex === 'male' ? 'males' : 'females'} `
  const bounds = [
    size.min === undefined ? undefined : `at least ${printedLimit(size.min, size.unit, reader.decimalMark)}`,
    size.max === undefined ? undefined : `at most ${printedLimit(size.max, size.unit, reader.decimalMark)}`,
  ].filter((bound) => bound !== undefined)
  const what = bounds.length === 0 ? 'no least size' : bounds.join(' and ')
  return sentence(`${who}${what}${where(size, pack)}`)
}

/** "5 crabs a person a day.", "1 bushel (35.2 L) a person a day." */
export function sayBag(bag: BagLimit, pack: RulePack): string {
  const amount =
    bag.value === undefined
      ? 'no limit stated'
      : `${reader.field(bag.value, '')} ${unitOf(bag)}${roomOf(bag, pack)}`
  const scope = { person: 'a person', boat: 'a boat', licence: 'a licence' }[bag.scope]
  const per =
    bag.per === undefined ? '' : ` ${{ day: 'a day', week: 'a week', '24-hours': 'in 24 hours' }[bag.per]}`
  const kind = bag.kind === 'possession' ? ' in possession' : ''
  const sex = bag.sex === undefined ? '' : ` of them ${bag.sex}`
  const together =
    bag.combinedWith === undefined
      ? ''
      : `, counted together with ${bag.combinedWith.map((slug) => nameOf(slug, pack)).join(', ')}`
  const crew = bag.fromPeople === undefined ? '' : `, from ${bag.fromPeople} people up`
  return sentence(`${amount}${sex} ${scope}${per}${kind}${together}${crew}${where(bag, pack)}`)
}

function unitOf({ unit, value }: BagLimit): string {
  if (unit === 'kg') return 'kg'
  if (unit === 'gallon-claws') return value === 1 ? 'gallon of claws' : 'gallons of claws'
  if (unit === 'dozen') return 'dozen crabs'
  if (unit === 'bushel' || unit === 'litre' || unit === 'gallon') return value === 1 ? unit : `${unit}s`
  return value === 1 ? unit.replace(/s$/, '') : unit
}

/** How much a container holds; a rule that says gallons does not say which. */
function roomOf(bag: BagLimit, pack: RulePack): string {
  const said = containerMeasures(bag, pack.region).map(
    ({ kind, litres }) => `${reader.digits(litres)} L${kind ? ` ${kind}` : ''}`,
  )
  if (said.length === 0) return ''
  return ` (${said.join(' or ')}${said.length > 1 ? `; ${w.whichGallon}` : ''})`
}

const nameOf = (slug: string, pack: RulePack) =>
  pack.species.find((one) => one.slug === slug)?.commonNames[0] ?? slug.replaceAll('-', ' ')

function where({ zones, seasons }: Pick<SizeLimit, 'zones' | 'seasons'>, pack: RulePack): string {
  return `${zones ? `, in ${namesOf(zones, pack)}` : ''}${seasons ? `, ${times(seasons)}` : ''}`
}

const namesOf = (zones: readonly string[], pack: RulePack) =>
  zones.map((id) => pack.zones.find((zone) => zone.id === id)?.name ?? id).join(', ')

const times = (seasons: readonly { readonly from: string; readonly to: string }[]) =>
  seasons.map(({ from, to }) => `${sayDayOfYear(from)} to ${sayDayOfYear(to)}`).join(', ')

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
const sentence = (text: string) => `${capital(text)}.`
