import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'
import { aliases } from './aliases'
import { stationData } from './station-data'

// Journeys through the built program. They share one machine's screen, so they run one after the other.
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  resolve: { alias: aliases },
  plugins: [stationData()],
  test: {
    name: 'journeys',
    environment: 'node',
    include: ['tests/e2e/**/*.test.ts'],
    fileParallelism: false,
    // A busy machine draws the pot in seconds.
    expect: { poll: { timeout: 15_000 } },
    testTimeout: 60_000,
    hookTimeout: 30_000,
  },
})
