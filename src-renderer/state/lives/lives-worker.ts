import { judgeLocker } from './judge-locker'
import type { LivesQuestion } from './lives-question'

/** A large locker takes a tenth of a second, so it is judged away from the interface. */
self.onmessage = (event: MessageEvent<LivesQuestion>) => self.postMessage(judgeLocker(event.data))
