/** Steel by its trade names; wire netting wears as metal. */
export function isMetal(material: string | undefined): boolean {
  return /^(wire|steel|stainless)/.test(material ?? '')
}
