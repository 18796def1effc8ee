import { tidePicture, type TideQuestion } from './tide-picture'

self.onmessage = (event: MessageEvent<TideQuestion>) => self.postMessage(tidePicture(event.data))
