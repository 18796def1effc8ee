import { starterPots } from '@shared/design/starter-pots'
import { CheckSchema, type Check } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import * as v from 'valibot'
import { expect, test } from 'vitest'
import { describe as describeModel } from './description'
import type { SceneModel } from './scene-model'

const texts = {
  lengthText: (metres: number) => `${String(Math.round(metres * 1000))} mm`,
  speedText: (speed: number) => `${String(speed)} m/s`,
}
const say = (model: SceneModel) => describeModel(model, texts)

function starter(): Pot {
  const pot = starterPots[1]
  if (!pot) throw new Error('there is no starting shape')
  return pot
}

const fine = { state: 'holds', findings: [] } as const

function checkWith(holdsBottom: unknown): Check {
  return v.parse(CheckSchema, {
    format: 'potwright/check',
    version: 1,
    overall: 'fails',
    verdicts: { legal: fine, holdsBottom, floatShows: fine, lifts: fine, fishes: fine, stows: fine },
  })
}

const heldBy = (slide: number, tip: number, worst: number) =>
  checkWith({
    state: 'fails',
    findings: [
      { rule: 'hold', state: 'fails', part: 'base-ring', what: 'It goes.', standing: 'engineering' },
    ],
    figures: {
      slideCurrentMps: { low: slide - 0.1, mid: slide, high: slide + 0.1 },
      tipCurrentMps: { low: tip - 0.1, mid: tip, high: tip + 0.1 },
      worstCurrentMps: worst,
    },
  })

test('names the pot and gives its size in the words it is handed', () => {
  const pot = starter()
  const said = say({ pot, mode: 'built' })
  expect(said).toContain(pot.name)
  expect(said).toContain(`${String(pot.body.heightMm)} mm high`)
  expect(said).not.toMatch(/undefined|NaN|m\/s/)
})

test('says which parts are marked as failing', () => {
  expect(say({ pot: starter(), mode: 'findings', check: heldBy(0.6, 1, 0.9) })).toContain(
    'Marked as failing: base ring.',
  )
})

test.each([
  ['slides down-current', 0.6, 1],
  ['tips over its down-current edge', 1, 0.6],
  ['stays where it is', 1, 1.1],
])('in a current of 0.9 m/s it %s', (words, slide, tip) => {
  const said = say({ pot: starter(), mode: 'drift', check: heldBy(slide, tip, 0.9), currentMps: 0.9 })
  expect(said).toContain(`At 0.9 m/s it ${words}.`)
})

test('without a check it cannot be told whether it stays', () => {
  expect(say({ pot: starter(), mode: 'drift' })).toContain('It cannot be told')
})

test('on the haul, an entrance opposite the bridle looks down and one beside it does not', () => {
  const hung = (bearingDeg: number): SceneModel => ({
    mode: 'haul',
    pot: {
      ...starter(),
      entrances: [{ kind: 'funnel', widthMm: 250, heightMm: 120, bearingDeg, sillMm: 40 }],
      bridle: { legs: 2, bearingDeg: 0, attach: 'base-ring' },
    },
  })
  expect(say(hung(180))).toContain('1 entrance looks down')
  expect(say(hung(90))).toContain('no entrance looks down')
})

test('counts parts by wear, and says when none is known', () => {
  expect(say({ pot: starter(), mode: 'wear', wear: { rope: 0.1, netting: 0.9, bridle: 0.95 } })).toContain(
    'worn out 1, sound 2',
  )
  expect(say({ pot: starter(), mode: 'wear' })).toContain('is not known')
})

test('a pot that does not fold is not said to be folded', () => {
  const pot = starter()
  const stiff = { ...pot, body: { ...pot.body, folds: false } }
  expect(say({ pot: stiff, mode: 'folded' })).toContain('It does not fold.')
})
