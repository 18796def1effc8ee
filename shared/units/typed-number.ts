/**
 * A number as people type it: with a full stop or a comma for the decimal in every locale and never grouped, or as a
 * fraction the way inches are written, `1/8`, `2 3/16` or `2-3/16`.
 *
 * @param text what was typed
 * @returns the number, or undefined where it is none
 */
export function typedNumber(text: string): number | undefined {
  const tidy = text.trim().replace('−', '-')
  const fraction = /^(?:(\d+)(?:\s+|-))?(\d+)\s*\/\s*(\d+)$/.exec(tidy)
  if (fraction) {
    const [whole, over, under] = [fraction[1] ?? '0', fraction[2], fraction[3]].map(Number) as [
      number,
      number,
      number,
    ]
    return under === 0 ? undefined : whole + over / under
  }
  const plain = tidy.replace(',', '.')
  const value = Number(plain)
  return plain === '' || !Number.isFinite(value) ? undefined : value
}
