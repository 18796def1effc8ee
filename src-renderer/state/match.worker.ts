import {
  answerMatch,
  ringMass,
  ringRows,
  type MatchAnswer,
  type MatchQuestion,
  type MatchTerms,
} from './match-question'
import type { Pot } from '@shared/schema/pot'

type Asked = { kind: 'match'; question: MatchQuestion } | { kind: 'rings'; pot: Pot; terms: MatchTerms }

const say = (answer: MatchAnswer) => self.postMessage(answer)

self.onmessage = ({ data }: MessageEvent<Asked>) => {
  if (data.kind === 'rings') {
    const { pot, terms } = data
    say({
      kind: 'rings',
      potId: pot.id,
      ringKg: ringMass(pot, terms.tables.materials),
      rings: ringRows(pot, terms),
    })
    say({ kind: 'end' })
  } else for (const answer of answerMatch(data.question, () => performance.now())) say(answer)
}
