import type { CoastShape } from './coast-shape'

let asked: Promise<readonly CoastShape[]> | undefined

/** The land of the world, worked out once away from the interface. */
export function coast(): Promise<readonly CoastShape[]> {
  asked ??= new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./coast.worker.ts', import.meta.url), { type: 'module' })
    worker.onmessage = (event: MessageEvent<CoastShape[]>) => {
      worker.terminate()
      resolve(event.data)
    }
    worker.onerror = () => {
      worker.terminate()
      asked = undefined
      reject(new Error('the coasts could not be drawn'))
    }
  })
  return asked
}
