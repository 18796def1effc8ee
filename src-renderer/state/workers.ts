/* Workers of the matching, each made anew for a question: to cancel one is to end it. */

export const matchWorker = () => new Worker(new URL('./match.worker.ts', import.meta.url), { type: 'module' })

export const proposeWorker = () =>
  new Worker(new URL('./propose.worker.ts', import.meta.url), { type: 'module' })
