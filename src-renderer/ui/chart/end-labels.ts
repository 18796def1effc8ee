export interface EndLabel {
  readonly text: string
  readonly at: number
  /** Which series it belongs to, for its colour. */
  readonly series: number
}

const LINE_PX = 15

/** Pushes the labels at the ends of lines apart so that none covers another, in the order of their lines. */
export function spreadLabels(labels: readonly EndLabel[], top: number, bottom: number): EndLabel[] {
  const sorted = [...labels].sort((a, b) => a.at - b.at)
  let least = top
  const pushed = sorted.map((label) => {
    const at = Math.max(label.at, least)
    least = at + LINE_PX
    return { ...label, at }
  })
  const over = Math.max(0, (pushed.at(-1)?.at ?? 0) - bottom)
  let most = bottom
  return pushed
    .reverse()
    .map((label) => {
      const at = over > 0 ? Math.min(label.at, most) : label.at
      most = at - LINE_PX
      return { ...label, at }
    })
    .reverse()
}
