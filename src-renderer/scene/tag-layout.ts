export interface Tag {
  /** The spot pointed at [px]. */
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  readonly text: string
}

const gap = 8
const reach = 64

/**
 * Sets tags beside what they point at, outwards from the middle of the picture, inside its edges and clear of each
 * other. Tags on one side are stacked in the order of their spots, so leader lines do not cross.
 */
export function placeTags<T extends Tag>(
  tags: readonly T[],
  width: number,
  height: number,
): (T & { left: number; top: number })[] {
  const sides = [tags.filter((tag) => tag.x < width / 2), tags.filter((tag) => tag.x >= width / 2)]
  return sides.flatMap((side, right) => {
    const ordered = [...side].sort((a, b) => a.y - b.y)
    let free = gap
    const placed = ordered.map((tag) => {
      const left = right ? tag.x + reach : tag.x - reach - tag.width
      const wanted = tag.y - reach / 2 - tag.height / 2
      const top = Math.max(free, wanted)
      free = top + tag.height + gap
      return { ...tag, left: Math.min(width - tag.width - gap, Math.max(gap, left)), top }
    })
    const over = Math.max(0, free - height)
    return placed.map((tag) => ({ ...tag, top: Math.max(gap, tag.top - over) }))
  })
}
