import { bench } from '@renderer/state/bench.svelte'
import { packs } from '@renderer/state/packs.svelte'
import { route } from '@renderer/state/route.svelte'

export const bookTabs = ['read', 'compare', 'legal', 'counts', 'own'] as const
type BookTab = (typeof bookTabs)[number]

const MOST_SIDE_BY_SIDE = 4

/** Where the Rulebook lies open; kept while the program runs. */
class RulebookView {
  tab = $state<BookTab>('read')
  query = $state('')
  #region = $state<string>()
  #beside = $state.raw<readonly string[]>([])
  /** The rule that somebody was sent to. */
  rule = $state<string>()

  /** The region that is read: the one turned to, else that of the trip, else the first. */
  region = $derived.by(() => {
    const wanted = [this.#region, bench.trip.region].find((one) => packs.find(one))
    return wanted ?? packs.list[0]?.region
  })

  /** Regions side by side, in the order of the columns. */
  beside = $derived.by(() => {
    const chosen = this.#beside.filter((region) => packs.find(region))
    return chosen.length > 0 ? chosen : this.region === undefined ? [] : [this.region]
  })
  isFull = $derived.by(() => this.beside.length >= MOST_SIDE_BY_SIDE)

  open(region: string, rule?: string): void {
    this.#region = region
    this.rule = rule
    this.tab = 'read'
    this.query = ''
  }

  /** Opens where the address says, as `US-WA/US-WA:cord-size`. */
  follow(detail: string): void {
    const [region, rule] = detail.split('/')
    if (region && packs.find(region)) this.open(region, rule)
  }

  setBeside(regions: readonly string[]): void {
    this.#beside = [...new Set(regions)].slice(0, MOST_SIDE_BY_SIDE)
    this.tab = 'compare'
    this.query = ''
  }
}

export const rulebookView = new RulebookView()

/** Turns the Rulebook to one rule, from any place. */
export function openRule(region: string, rule: string): void {
  route.go('rulebook', `${region}/${rule}`)
}
