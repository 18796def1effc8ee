import { bisector } from 'd3-array'
import { reader } from '../reader.svelte'
import type { PlotAxis, PlotPoint, PlotSeries } from './plot-model'

const near = bisector<PlotPoint, number>((point) => point.x)

/** Where on a chart the reader is, by hover or by key, and what stands there in words. */
export class PlotReading {
  at = $state<number>()

  constructor(
    private readonly series: () => readonly PlotSeries[],
    private readonly axis: () => PlotAxis,
    private readonly unit: () => string,
  ) {}

  points = $derived.by(() => this.series()[0]?.points ?? [])
  last = $derived.by(() => Math.max(0, this.points.length - 1))
  point = $derived.by(() => (this.at === undefined ? undefined : this.points[Math.min(this.at, this.last)]))
  /** For whoever hears it: the point that is read, or the first one. */
  spoken = $derived.by(() => {
    const point = this.point ?? this.points[0]
    return point && this.say(point)
  })

  hover(x: number): void {
    if (this.points.length > 0) this.at = near.center(this.points, x)
  }

  leave(): void {
    this.at = undefined
  }

  /** Moves by the keys of a slider; says whether the key was one of them. */
  press(key: string): boolean {
    const at = this.at ?? 0
    const stride = Math.max(1, Math.round(this.points.length / 24))
    const steps: Record<string, number> = {
      ArrowRight: at + 1,
      ArrowLeft: at - 1,
      PageUp: at + stride,
      PageDown: at - stride,
      Home: 0,
      End: this.last,
    }
    const to = steps[key]
    if (to === undefined) return false
    this.at = Math.min(this.last, Math.max(0, to))
    return true
  }

  valueOf(one: PlotSeries, x: number): PlotPoint | undefined {
    return one.points[near.center(one.points, x)]
  }

  say(point: PlotPoint): string {
    const named = this.series().length > 1
    const values = this.series().flatMap((one) => {
      const found = this.valueOf(one, point.x)
      return found ? [`${named ? `${one.label} ` : ''}${reader.say(found.y, this.unit())}`] : []
    })
    return `${this.axis().say(point.x)}: ${values.join(', ')}`
  }
}
