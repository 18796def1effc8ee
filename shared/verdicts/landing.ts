import { landing, type PlanFlow } from '@shared/design/plan-drag'
import type { Coefficients } from '@shared/physics/coefficients'
import type { Sinking } from '@shared/physics/lifting/sinking'
import { stateOver } from './judging'
import { growthDrag, type Prepared } from './prepared'

/** How a pot comes down, and whether that can be relied on. */
export interface Landing {
  readonly state: ReturnType<typeof stateOver>
  /** With the middle figures. */
  readonly likely: Sinking
}

/**
 * Whether a pot lands base down with the likely figures, and with the worst there can be.
 *
 * Drag on its base turns a pot over and drag on its top rights it, so no one end of a coefficient's spread is the
 * worse for every pot: it holds only where every choice of low and high figures rights it.
 *
 * @returns state and the likely fall; undefined where the weight cannot be told
 * @source shared/physics/lifting/sinking
 */
export function landingOf(prepared: Prepared): Landing | undefined {
  const { input, mass, waterDensity, sets } = prepared
  const growth = growthDrag(prepared)
  const fall = (flow: Omit<PlanFlow, 'growthDrag'>) =>
    landing(input.pot, input.materials, mass, waterDensity, { ...flow, growthDrag: growth })
  const likely = fall(sets.middle)
  if (!likely) return undefined
  const rightedBy = everyFlow(input.coefficients).map((flow) => fall(flow)?.landsBaseDown === true)
  const state = stateOver({
    middle: likely.landsBaseDown,
    cautious: rightedBy.every(Boolean),
    hopeful: rightedBy.some(Boolean),
  })
  return { state, likely }
}

const spreadOver = ['foulingTwineFactor', 'barCd', 'wakeFactor', 'closedBaseCd'] as const
type Flow = Readonly<Record<(typeof spreadOver)[number], number>>

/** Every choice of low or high for what the drag of a sinking pot is reckoned with. */
const everyFlow = (sheet: Coefficients): readonly Flow[] =>
  spreadOver.reduce<readonly Partial<Flow>[]>(
    (flows, key) =>
      flows.flatMap((flow) => [
        { ...flow, [key]: sheet[key].low },
        { ...flow, [key]: sheet[key].high },
      ]),
    [{}],
  ) as readonly Flow[]
