import type { Finding, VerdictName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import { formatNominal } from '@shared/units/display'
import { plainLocale } from '@shared/units/locale'
import { barSizesMm } from '@shared/verdicts/single-changes'
import { withBaseRing } from '../ring-needed'
import { failing, obstacle } from './acceptance'
import { checkAt, type ProposeRequest } from './request'

/** What stands in the way of a lighter design, or of any. */
export interface Bind {
  /** The step that was tried, as `base ring 10 mm`; left out where the design itself is meant. */
  readonly step: string | undefined
  readonly waterId: string
  readonly verdict: VerdictName
  readonly finding: Finding
}

/**
 * What keeps a design from being lighter: one step down in each part, and the finding that it runs into.
 *
 * @param pot     a design that passes
 * @param request the question it answers
 * @returns one entry for each step that fails; a part that can go no smaller has none
 */
export function bindsOf(pot: Pot, request: ProposeRequest): Bind[] {
  return smallerBy(pot, request).flatMap(({ step, pot: smaller }) => {
    const bind = firstObstacle(smaller, request, step)
    return bind ? [bind] : []
  })
}

/** Everything that keeps a design from passing, the first finding of each verdict at each place. */
export function obstaclesOf(pot: Pot, request: ProposeRequest): Bind[] {
  const { places, setting, waived = [] } = request
  return places.flatMap((place) => {
    const check = checkAt(pot, place, setting)
    return failing(check, waived).flatMap((verdict) => {
      const finding = obstacle(check, verdict)
      return finding ? [{ step: undefined, waterId: place.water.id, verdict, finding }] : []
    })
  })
}

const firstObstacle = (pot: Pot, request: ProposeRequest, step: string): Bind | undefined => {
  const [bind] = obstaclesOf(pot, request)
  return bind && { ...bind, step }
}

/** The design with one part a step smaller. */
function smallerBy(pot: Pot, { setting }: ProposeRequest): { step: string; pot: Pot }[] {
  const { frame, rope, float } = pot
  const { ropes, floats } = setting.materials
  const size = (millimetres: number) => formatNominal(millimetres, setting.locale ?? plainLocale)
  const steps: { step: string; pot: Pot }[] = []
  const bar = frame?.find(({ role }) => role === 'base-ring')?.barDiameterMm
  const thinner = below(barSizesMm, bar)
  if (thinner !== undefined)
    steps.push({ step: `base ring ${size(thinner)}`, pot: withBaseRing(pot, thinner) })
  if (rope) {
    const sizes = ropes
      .filter(({ material }) => material === rope.material)
      .map(({ diameterMm }) => diameterMm)
    const diameterMm = below(sizes, rope.diameterMm)
    if (diameterMm !== undefined)
      steps.push({ step: `rope ${size(diameterMm)}`, pot: { ...pot, rope: { ...rope, diameterMm } } })
  }
  if (float) {
    const sizes = floats.filter(({ shape }) => shape === float.shape)
    const diameterMm = below(
      sizes.map((row) => row.diameterMm),
      float.diameterMm,
    )
    const row = sizes.find((known) => known.diameterMm === diameterMm)
    if (row) {
      const smaller = { ...float, diameterMm: row.diameterMm, massKg: row.massKg }
      steps.push({ step: `float ${size(row.diameterMm)}`, pot: { ...pot, float: smaller } })
    }
  }
  return steps
}

/** The largest of some sizes below one. */
function below(sizes: readonly number[], size: number | undefined): number | undefined {
  const smaller = size === undefined ? [] : sizes.filter((known) => known < size)
  return smaller.length > 0 ? Math.max(...smaller) : undefined
}
