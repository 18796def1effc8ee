import './theme.css'
import { describe, expect, test } from 'vitest'

/* Contrast as WCAG 2.2 reckons it; lightness as CIE L*. Every pair that is laid on each other is listed. */

const grounds = ['page', 'surface', 'surface-raised'] as const
const states = ['fails', 'holds', 'cannot-tell', 'close'] as const

function colourOf(name: string): [number, number, number] {
  if (getComputedStyle(document.documentElement).getPropertyValue(`--${name}`) === '')
    throw new Error(`--${name} is not a colour of the theme`)
  const probe = document.createElement('span')
  probe.style.color = `var(--${name})`
  document.body.append(probe)
  const parts =
    getComputedStyle(probe)
      .color.match(/[\d.]+/g)
      ?.map(Number) ?? []
  probe.remove()
  const [r = 0, g = 0, b = 0] = parts
  return [r, g, b]
}

function luminance(name: string): number {
  const [r, g, b] = colourOf(name).map((channel) => {
    const c = channel / 255
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4
  }) as [number, number, number]
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number]
  return (light + 0.05) / (dark + 0.05)
}

function lightness(name: string): number {
  const y = luminance(name)
  return y > 0.008856 ? 116 * Math.cbrt(y) - 16 : 903.3 * y
}

describe.each(['light', 'dark'])('%s', (theme) => {
  const under = (check: () => void) => () => {
    document.documentElement.dataset['theme'] = theme
    check()
  }
  const text = [
    ...grounds.flatMap((ground) => [
      ['ink', ground],
      ['ink-soft', ground],
      ['action', ground],
      ['series-1', ground],
      ['series-2', ground],
      ['series-3', ground],
      ['series-4', ground],
    ]),
    ...states.flatMap((state) => [
      ['ink', `tint-${state}`],
      ['ink-soft', `tint-${state}`],
      ['action', `tint-${state}`],
    ]),
    ['state-fails', 'surface-raised'],
    ['state-fails', 'surface'],
    ['action', 'action-tint'],
    ['ink', 'well'],
    ['ink-soft', 'well'],
    ['action-ink', 'action'],
    ['action-ink', 'action-strong'],
    ['band-ink', 'band'],
    ['band-ink-soft', 'band'],
    ['band-action', 'band'],
  ] as [string, string][]
  test.each(text)('text %s on %s', (ink, ground) =>
    under(() => expect(contrast(ink, ground)).toBeGreaterThanOrEqual(4.5))(),
  )

  const marks = [
    ...states.flatMap((state) => [...grounds, `tint-${state}`].map((ground) => [`state-${state}`, ground])),
    ...grounds.flatMap((ground) => [
      ['control-line', ground],
      ['focus', ground],
      ['chart-axis', ground],
    ]),
    ['control-line', 'well'],
    ['band-focus', 'band'],
  ] as [string, string][]
  test.each(marks)('mark %s on %s', (mark, ground) =>
    under(() => expect(contrast(mark, ground)).toBeGreaterThanOrEqual(3))(),
  )

  test(
    'the four states differ in lightness alone',
    under(() => {
      const sorted = states.map((state) => lightness(`state-${state}`)).sort((a, b) => a - b)
      const steps = sorted.slice(1).map((value, index) => value - (sorted[index] ?? 0))
      expect(Math.min(...steps)).toBeGreaterThanOrEqual(7)
    }),
  )
})
