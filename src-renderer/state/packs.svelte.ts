import { citedHosts } from '@shared/rules/cited-hosts'
import { parsePack } from '@shared/rules/pack'
import type { RulePack } from '@shared/schema/rule-pack'
import { err, ok, type AppError, type Result } from '@shared/units/result'
import { bridge } from './bridge'

/** One region: the rules to judge by, and the two that they are laid together from. */
export interface RegionRules {
  readonly region: string
  readonly pack: RulePack
  readonly owner: 'built-in' | 'user'
  readonly own?: RulePack
  readonly builtIn?: RulePack | undefined
}

/** The rules of every region, shipped and the reader's own; theirs stand in for shipped ones. */
class PacksState {
  regions = $state.raw<readonly RegionRules[]>([])
  /** Packs that could not be read, each with what is wrong in it. */
  problems = $state.raw<readonly { readonly region: string; readonly message: string }[]>([])
  error = $state.raw<AppError>()

  list = $derived.by((): readonly RulePack[] => this.regions.map((one) => one.pack))
  /** Hosts that the shipped rules cite: pages elsewhere are not opened. */
  hosts = $derived.by(() => citedHosts(this.regions.map((one) => one.builtIn)))

  find(region: string | undefined): RulePack | undefined {
    return this.rules(region)?.pack
  }

  rules(region: string | undefined): RegionRules | undefined {
    return this.regions.find((one) => one.region === region)
  }

  async load(): Promise<void> {
    const answer = await bridge('packs:list', {})
    if (!answer.ok) {
      this.error = answer.error
      return
    }
    this.error = undefined
    const { packs, problems } = answer.value
    this.regions = packs
      .map(({ own, ...one }) => ({ ...one, builtIn: own ? one.builtIn : one.pack, ...read(own) }))
      .sort((a, b) => a.pack.name.localeCompare(b.pack.name))
    this.problems = problems.map(({ file, message }) => ({ region: file, message }))
  }

  /** Keeps rules of the reader's own; what is refused leaves those in use as they are. */
  async keep(own: unknown): Promise<Result<string>> {
    const read = parsePack(own)
    if (!read.ok) return read
    const answer = await bridge('packs:save', { pack: read.value })
    if (!answer.ok) return answer
    await this.load()
    return ok(answer.value.region)
  }

  /** Takes the reader's own rules of a region away; returns what was taken. */
  async remove(region: string): Promise<Result<RulePack>> {
    const own = this.rules(region)?.own
    const answer = await bridge('packs:delete', { region })
    if (!answer.ok) return answer
    await this.load()
    return own
      ? ok(own)
      : err({ code: 'not_found', message: `There are no rules of your own for ${region}.` })
  }
}

/** Rules of the reader's own; a file that was kept and does not fit is among the problems. */
function read(raw: unknown): { own?: RulePack } {
  const pack = raw === undefined ? undefined : parsePack(raw)
  return pack?.ok ? { own: pack.value } : {}
}

export const packs = new PacksState()
