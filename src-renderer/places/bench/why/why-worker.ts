import { conditionsAt } from '@shared/tides/conditions'
import { singleChanges } from '@shared/verdicts/best-change'
import { currentOverRingMass, explain, factorOverCurrent } from '@shared/verdicts/explain'
import type { WhyAnswer, WhyQuestion } from './why-question'

const BARS_MM = [6, 8, 10, 12, 14, 16, 18, 20, 22, 25]

/** Forces, curves and changes: some hundred solutions of the rope, so they are found away from the interface. */
function answer({ pot, trip, water, predicted, outlook, locale, tables }: WhyQuestion): WhyAnswer {
  const input = {
    pot,
    trip,
    locale,
    ...tables,
    ...(water ? { conditions: conditionsAt(water, predicted) } : {}),
  }
  return {
    explanation: explain(input, { outlook }),
    changes: singleChanges(input),
    factors: factorOverCurrent(input),
    rings: currentOverRingMass(input, BARS_MM),
  }
}

self.onmessage = (event: MessageEvent<WhyQuestion>) => self.postMessage(answer(event.data))
