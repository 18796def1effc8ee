import { AsyncLocalStorage } from 'node:async_hooks'

/**
 * Which of several pages the call under way came from, where it says so. What is written for one is news to the others,
 * and to it is not.
 */
export const askingPage = new AsyncLocalStorage<string>()
