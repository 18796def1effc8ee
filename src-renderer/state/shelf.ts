import type { Pot } from '@shared/schema/pot'
import type { Water } from '@shared/schema/water'
import { bridge } from './bridge'
import { DocumentShelf } from './document-shelf.svelte'

const revised = (revision: string | undefined) => (revision === undefined ? {} : { revision })

/** The saved designs. */
export const shelf = new DocumentShelf<Pot>({
  list: () => bridge('pots:list', {}),
  save: (document, revision) => bridge('pots:save', { document, ...revised(revision) }),
  delete: (id) => bridge('pots:delete', { id }),
  restore: (id) => bridge('pots:restore', { id }),
  import: (text, ifExists) => bridge('pots:import', { text, ifExists }),
  export: (id) => bridge('pots:export', { id }),
  settle: (problem, choice) => bridge('pots:settle', { problem, choice }),
})

/** The saved waters. */
export const waters = new DocumentShelf<Water>({
  list: () => bridge('waters:list', {}),
  save: (document, revision) => bridge('waters:save', { document, ...revised(revision) }),
  delete: (id) => bridge('waters:delete', { id }),
  restore: (id) => bridge('waters:restore', { id }),
  import: (text, ifExists) => bridge('waters:import', { text, ifExists }),
  export: (id) => bridge('waters:export', { id }),
  settle: (problem, choice) => bridge('waters:settle', { problem, choice }),
})
