import { withOwnMaterials } from '@shared/design/materials/built-in'
import type { OwnMaterials } from '@shared/schema/materials'
import type { AppError } from '@shared/units/result'
import { notices } from '@renderer/ui/notices.svelte'
import { bridge } from './bridge'

/** The shipped tables of materials with the reader's own rows and prices over them. */
class MaterialsState {
  own = $state.raw<OwnMaterials>({ format: 'potwright/materials', version: 1 })
  error = $state.raw<AppError>()
  tables = $derived.by(() => withOwnMaterials(this.own))

  async load(): Promise<void> {
    const answer = await bridge('materials:get', {})
    if (answer.ok) this.own = answer.value
    this.error = answer.ok ? undefined : answer.error
  }

  /** Keeps the reader's rows; the tables stay as they were where the disk refuses. */
  async save(own: OwnMaterials): Promise<boolean> {
    const answer = await bridge('materials:save', own)
    if (answer.ok) this.own = answer.value
    else notices.say(answer.error.message, { tone: 'fails' })
    return answer.ok
  }
}

export const materials = new MaterialsState()
