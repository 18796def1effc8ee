import { gaugeEntries } from '@shared/rules/gauge'
import { bench } from '@renderer/state/bench.svelte'
import { packs } from '@renderer/state/packs.svelte'

/** What the Gauge lies ready for: where, when and for which animal. It starts from the trip and leaves that alone. */
class GaugeView {
  #region = $state<string>()
  #zone = $state<string>()
  #date = $state<string>()
  #species = $state<string>()
  measuredMm = $state<number>()
  sex = $state<'male' | 'female' | 'unknown'>('unknown')
  eggBearing = $state(false)
  softShell = $state(false)

  pack = $derived.by(() => packs.find(this.#region) ?? packs.find(bench.trip.region))
  #isTripHere = $derived.by(() => this.pack?.region === bench.trip.region)
  zone = $derived.by(() => {
    const wanted = this.#zone ?? (this.#isTripHere ? bench.trip.zone : undefined)
    return this.pack?.zones.some((one) => one.id === wanted) ? wanted : undefined
  })
  date = $derived.by(() => this.#date ?? bench.trip.date)
  entries = $derived.by(() =>
    this.pack
      ? gaugeEntries(this.pack, {
          ...(this.zone === undefined || this.zone === '' ? {} : { zone: this.zone }),
          ...(this.date === undefined || this.date === '' ? {} : { date: this.date }),
        })
      : [],
  )
  entry = $derived.by(
    () =>
      this.entries.find(({ species }) => species.id === this.#species) ??
      this.entries.find(({ species }) => this.#isTripHere && bench.trip.species?.includes(species.slug)) ??
      this.entries[0],
  )

  /** Opens where the address says, as `US-WA/US-WA:sp-redrock`. */
  follow(detail: string): void {
    const [region, species] = detail.split('/')
    if (!region || !packs.find(region)) return
    this.setRegion(region)
    this.#species = species
    // Whoever was sent to a species is shown it, whatever the zone and the date.
    if (species && !this.entries.some((one) => one.species.id === species)) {
      this.#zone = ''
      this.#date = ''
    }
  }

  setRegion(region: string | undefined): void {
    if (region === this.pack?.region) return
    this.#region = region
    this.#zone = undefined
    this.#species = undefined
    this.forget()
  }

  setZone(zone: string | undefined): void {
    this.#zone = zone ?? ''
  }

  setDate(date: string): void {
    this.#date = date
  }

  choose(species: string): void {
    this.#species = species
    this.forget()
  }

  /** The next animal is another one. */
  forget(): void {
    this.measuredMm = undefined
    this.sex = 'unknown'
    this.eggBearing = false
    this.softShell = false
  }
}

export const gaugeView = new GaugeView()
