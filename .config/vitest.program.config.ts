import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'
import { aliases } from './aliases'

// What the built program costs, measured from outside. It prints; a slow machine is no failure.
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  resolve: { alias: aliases },
  test: {
    name: 'program',
    environment: 'node',
    include: ['tests/bench/program/*.measure.ts'],
    disableConsoleIntercept: true,
    testTimeout: 300_000,
    hookTimeout: 120_000,
  },
})
