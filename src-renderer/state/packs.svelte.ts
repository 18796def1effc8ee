import { parsePack } from '@shared/rules/pack'
import type { RulePack } from '@shared/schema/rule-pack'
import type { AppError } from '@shared/units/result'
import { bridge } from './bridge'

/** The rules of every region, shipped and the reader's own; theirs stand in for shipped ones. */
class PacksState {
  list = $state.raw<readonly RulePack[]>([])
  /** Packs that could not be read, each with what is wrong in it. */
  problems = $state.raw<readonly { readonly region: string; readonly message: string }[]>([])
  error = $state.raw<AppError>()

  find(region: string | undefined): RulePack | undefined {
    return this.list.find((pack) => pack.region === region)
  }

  async load(): Promise<void> {
    const answer = await bridge('packs:list', {})
    if (!answer.ok) {
      this.error = answer.error
      return
    }
    const read = answer.value.packs.map(({ region, pack }) => ({ region, read: parsePack(pack) }))
    this.list = read
      .flatMap(({ read: one }) => (one.ok ? [one.value] : []))
      .sort((a, b) => a.name.localeCompare(b.name))
    this.problems = [
      ...read.flatMap(({ region, read: one }) => (one.ok ? [] : [{ region, message: one.error.message }])),
      ...answer.value.problems.map(({ file, message }) => ({ region: file, message })),
    ]
  }
}

export const packs = new PacksState()
