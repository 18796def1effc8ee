import type { Pot } from '@shared/schema/pot'
import { reader } from '@renderer/ui/reader.svelte'
import { entranceWords, floatShapeWords, nettingWords, shapeWords } from './parts/words'

const mm = (value: number) => reader.say(value, 'mm')

/** The pot in a few sentences, for whoever does not see the picture. */
export function potInWords(pot: Pot): string {
  return [
    bodySentence(pot),
    frameSentence(pot),
    nettingSentence(pot),
    entranceSentence(pot),
    lineSentence(pot),
  ]
    .filter(Boolean)
    .join(' ')
}

function bodySentence({ name, body }: Pot): string {
  const size =
    body.shape === 'box'
      ? `${mm(body.lengthMm)} long, ${mm(body.widthMm)} wide`
      : `${mm(body.baseDiameterMm)} across at the base, ${mm(body.topDiameterMm)} at the top`
  return `${name}: ${shapeWords[body.shape].toLowerCase()}, ${size}, ${mm(body.heightMm)} high${body.folds ? ', folds flat' : ''}.`
}

function frameSentence({ frame }: Pot): string {
  const base = frame?.find((member) => member.role === 'base-ring')
  return base ? `Base ring of ${mm(base.barDiameterMm)} bar.` : ''
}

function nettingSentence({ netting }: Pot): string {
  return netting ? `${nettingWords[netting.material]} of ${mm(netting.barLengthMm)} mesh.` : 'No netting.'
}

function entranceSentence({ entrances = [] }: Pot): string {
  const [first] = entrances
  if (!first) return 'No entrance.'
  const at = entrances.map((entrance) => `${Math.round(entrance.bearingDeg)}°`).join(' and ')
  return `${entrances.length} ${entranceWords[first.kind].toLowerCase()}${entrances.length > 1 ? 's' : ''}, ${mm(first.widthMm)} by ${mm(first.heightMm)}, at ${at} from the front.`
}

function lineSentence({ rope, float }: Pot): string {
  const line = rope ? `${reader.say(rope.lengthM, 'm')} of ${mm(rope.diameterMm)} rope` : 'No rope'
  return float
    ? `${line} to a ${floatShapeWords[float.shape].toLowerCase()} float ${mm(float.diameterMm)} across.`
    : `${line}, no float.`
}
