import { cdp } from 'vitest/browser'
import { createRawSnippet } from 'svelte'
import { expect, test } from 'vitest'
import { render } from 'vitest-browser-svelte'
import Promised from './Promised.svelte'

const text = (words: string) => createRawSnippet(() => ({ render: () => `<p>${words}</p>` }))
const said = createRawSnippet((value: () => unknown) => ({ render: () => `<p>${String(value())}</p>` }))

/** A promise that is kept when the test says so. */
function promised<T>() {
  let resolve: (value: T) => void = () => undefined
  const promise = new Promise<T>((keep) => (resolve = keep))
  return { promise, resolve }
}

const words = { children: said, waiting: text('wait'), failed: text('failed') }

test('says that it waits, then what came or that nothing came', async () => {
  const { promise, resolve } = promised<string>()
  const screen = await render(Promised, { promise, ...words })
  await expect.element(screen.getByText('wait')).toBeVisible()
  resolve('twelve pots')
  await expect.element(screen.getByText('twelve pots')).toBeVisible()
  await screen.rerender({ promise: Promise.reject(new Error('torn')) })
  await expect.element(screen.getByText('failed')).toBeVisible()
})

test('shows what was asked for last, whichever comes first', async () => {
  const [first, second] = [promised<string>(), promised<string>()]
  const screen = await render(Promised, { promise: first.promise, ...words })
  await screen.rerender({ promise: second.promise })
  second.resolve('the second')
  await expect.element(screen.getByText('the second')).toBeVisible()
  first.resolve('the first')
  await first.promise
  await expect.element(screen.getByText('the second')).toBeVisible()
})

test('keeps nothing of what was left', async () => {
  const left: WeakRef<object>[] = []
  for (let visit = 0; visit < 5; visit++) {
    const value = { visit }
    left.push(new WeakRef(value))
    const children = createRawSnippet(() => ({ render: () => `<p>visit ${visit}</p>` }))
    const screen = await render(Promised, { promise: Promise.resolve(value), children })
    await expect.element(screen.getByText(`visit ${visit}`)).toBeVisible()
    await screen.unmount()
  }
  await cdp().send('HeapProfiler.collectGarbage')
  // The last may still be held by the page of tests itself.
  expect(left.slice(0, -1).map((each) => each.deref())).toEqual(left.slice(0, -1).map(() => undefined))
})
