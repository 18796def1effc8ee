import { verdictNames, type Check } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import { driftOutcome } from './drift-pose'
import { failingParts } from './failing-parts'
import { partWords } from './part-words'
import type { SceneModel, SceneOptions } from './scene-model'
import { entrancesBelow } from './haul-pose'
import { sceneGeometry } from './scene-geometry'
import { wearLegend } from './wear-colours'

type Texts = Pick<SceneOptions, 'lengthText' | 'speedText'>

/** The picture in a few sentences: what stands there, what stands out, and what the mode shows. */
export function describe(model: SceneModel, texts: Texts): string {
  return [
    ...potSentences(model.pot, texts),
    ...crabSentences(model, texts),
    ...checkSentences(model.check),
    ...modeSentences(model, texts),
  ].join(' ')
}

const shapes: Record<Pot['body']['shape'], string> = {
  round: 'a round pot',
  box: 'a box',
  cone: 'a cone',
  dome: 'a dome',
}

function potSentences(pot: Pot, { lengthText }: Texts): string[] {
  const mm = (value: number) => lengthText(value / 1000)
  const { body, netting, entrances = [], bait, rope, float, frame } = pot
  const across =
    body.shape === 'box'
      ? `${mm(body.lengthMm)} long and ${mm(body.widthMm)} wide`
      : `${mm(body.baseDiameterMm)} across the base and ${mm(body.topDiameterMm)} across the top`
  const ring = frame?.find(({ role }) => role === 'base-ring')
  const [first] = entrances
  const facing = entrances.map(({ bearingDeg, onTop }) => (onTop ? 'on top' : facingWord(bearingDeg)))
  return [
    `${pot.name}: ${shapes[body.shape]}, ${across}, ${mm(body.heightMm)} high.`,
    ...(ring ? [`Base ring of ${mm(ring.barDiameterMm)} bar.`] : []),
    netting
      ? `Netting with ${mm(netting.barLengthMm)} bars of ${mm(netting.twineDiameterMm)} ${netting.material.startsWith('wire') ? 'wire' : 'twine'}.`
      : 'No netting.',
    first
      ? `${count(entrances.length, 'entrance')}, ${mm(first.widthMm)} by ${mm(first.heightMm)}: ${facing.join(', ')}.`
      : 'No entrance.',
    ...(bait ? [`Bait ${bait.at === 'centre' ? 'in the middle' : `at the ${bait.at}`}.`] : []),
    `${rope ? `${lengthText(rope.lengthM)} of ${mm(rope.diameterMm)} rope` : 'No rope'}${
      float ? `, ${listed(float.colours)} float ${mm(float.diameterMm)} across.` : ', no float.'
    }`,
  ]
}

function crabSentences({ mode, crabWidthMm }: SceneModel, { lengthText }: Texts): string[] {
  return mode === 'built' && crabWidthMm
    ? [`A crab ${lengthText(crabWidthMm / 1000)} across stands beside it for scale.`]
    : []
}

function checkSentences(check: Check | undefined): string[] {
  if (!check) return []
  const failing = failingParts(check)
  const marked = failing.map((part) => partWords[part].toLowerCase())
  if (marked.length > 0) return [`Marked as failing: ${listed(marked)}.`]
  return verdictNames.some((name) => check.verdicts[name].state === 'fails')
    ? []
    : ['No part is marked as failing.']
}

function modeSentences(model: SceneModel, texts: Texts): string[] {
  switch (model.mode) {
    case 'folded':
      return [model.pot.body.folds ? 'Shown folded flat.' : 'It does not fold.']
    case 'wear':
      return wearSentences(model)
    case 'haul':
      return [haulSentence(model)]
    case 'drift':
      return [driftSentence(model, texts)]
    case 'rig':
      return model.line
        ? [`Shown with its whole rope in ${texts.lengthText(model.line.depthM)} of water.`]
        : ['The rope in the water cannot be shown until depth and current are known.']
    case 'built':
    case 'findings':
      return []
  }
}

function wearSentences({ wear = {} }: SceneModel): string[] {
  const groups = wearLegend(wear).filter(({ parts }) => parts > 0)
  if (groups.length === 0) return ['The wear of its parts is not known.']
  return [
    `By wear: ${groups.map(({ label, parts }) => `${label.toLowerCase()} ${String(parts)}`).join(', ')}.`,
  ]
}

function haulSentence(model: SceneModel): string {
  const { hang } = sceneGeometry(model, 0)
  const below = entrancesBelow(model.pot.entrances ?? [], hang)
  return below.length > 0
    ? `Hanging on the haul, ${count(below.length, 'entrance')} ${below.length === 1 ? 'looks' : 'look'} down, and crabs can drop out.`
    : 'Hanging on the haul, no entrance looks down.'
}

function driftSentence(model: SceneModel, { speedText }: Texts): string {
  const speed = model.currentMps === undefined ? 'the strongest current' : speedText(model.currentMps)
  return {
    stays: `At ${speed} it stays where it is.`,
    slides: `At ${speed} it slides down-current.`,
    tips: `At ${speed} it tips over its down-current edge.`,
    unknown: 'It cannot be told whether it stays where it is.',
  }[driftOutcome(model.check)]
}

function facingWord(bearingDeg: number): string {
  const side = ['to the front', 'to the right', 'to the back', 'to the left'][Math.round(bearingDeg / 90) % 4]
  return bearingDeg % 90 === 0 && side ? side : `at ${String(Math.round(bearingDeg))}° from the front`
}

function count(n: number, word: string): string {
  return `${String(n)} ${word}${n === 1 ? '' : 's'}`
}

function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`
}
