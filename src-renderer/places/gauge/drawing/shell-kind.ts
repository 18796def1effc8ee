import type { MeasureMethod, Species } from '@shared/schema/rule-species'
import { shells, type Shell, type ShellKind } from './shells'

const byGenus: Readonly<Record<string, ShellKind>> = {
  scylla: 'mud-crab',
  portunus: 'swimmer',
  callinectes: 'swimmer',
  ovalipes: 'swimmer',
  necora: 'swimmer',
  carcinus: 'oval',
  cancer: 'oval',
  metacarcinus: 'oval',
  romaleon: 'oval',
  menippe: 'oval',
  pseudocarcinus: 'oval',
  maja: 'spider',
  majidae: 'spider',
  chionoecetes: 'spider',
  paralithodes: 'spider',
  ranina: 'frog',
  homarus: 'lobster',
  jasus: 'rock-lobster',
  sagmariasus: 'rock-lobster',
  panulirus: 'rock-lobster',
}

/** For an animal that is not known: the sort that is measured this way. */
const byMethod: Partial<Record<MeasureMethod, ShellKind>> = {
  'width-tip-to-tip': 'swimmer',
  'width-notch-to-notch': 'swimmer',
  'width-base-of-spines': 'swimmer',
  'length-without-spines': 'spider',
  'length-eye-to-rear': 'lobster',
  'tail-length': 'lobster',
  'tail-width': 'lobster',
}

/** The sort of animal to draw for a species; for a claw that is measured, the claw. */
export function shellKindOf({ slug, measure }: Pick<Species, 'slug' | 'measure'>): ShellKind {
  if (measure.method === 'claw-length') return 'claw'
  return byGenus[slug.split('-')[0] ?? ''] ?? byMethod[measure.method] ?? 'oval'
}

export const shellOfKind = (kind: ShellKind): Shell => shells[kind]

/** The measured distance in the drawing's own units; undefined where nothing is measured on it. */
export function drawnSize(shell: Shell, method: MeasureMethod): number | undefined {
  const contact = shell.contacts[method]
  if (!contact) return undefined
  return contact.axis === 'width' ? 2 * contact.x : contact.to - contact.from
}
