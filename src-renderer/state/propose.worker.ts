import { answerPropose, type ProposeQuestion } from './propose-question'

self.onmessage = ({ data }: MessageEvent<ProposeQuestion>) => {
  for (const answer of answerPropose(data, () => performance.now())) self.postMessage(answer)
}
