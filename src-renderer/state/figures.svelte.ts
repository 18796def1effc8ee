import { fishingAssumptions } from '@shared/fishing/assumptions'
import { coefficientsWith, type Coefficients } from '@shared/physics/coefficients'
import { withOverrides } from '@shared/schema/assumption'
import type { Materials } from '@shared/schema/materials'
import { materials } from './materials.svelte'
import { settings } from './settings.svelte'

/** What every model reckons with, as it crosses to a worker. */
export interface Tables {
  readonly materials: Materials
  readonly coefficients: Coefficients
}

/** The figures behind the verdicts, the reader's own in place of the shipped ones. */
class Figures {
  coefficients = $derived.by(() => coefficientsWith(settings.current.coefficients ?? {}))
  fishing = $derived.by(() => withOverrides(fishingAssumptions, settings.current.assumptions ?? {}))
  tables = $derived.by((): Tables => ({ materials: materials.tables, coefficients: this.coefficients }))
}

export const figures = new Figures()
