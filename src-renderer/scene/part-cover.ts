import type { PartName } from '@shared/schema/check'

const frame: readonly PartName[] = ['base-ring', 'middle-ring', 'top-ring', 'strut', 'cross-bar']

const wider: Partial<Record<PartName, readonly PartName[]>> = {
  frame,
  body: [...frame, 'netting'],
}

/** Whether what is said of one part is about a drawn part: the frame is all its members, the body what it is made of. */
export function covers(said: PartName, drawn: PartName): boolean {
  return said === drawn || (wider[said]?.includes(drawn) ?? false)
}
