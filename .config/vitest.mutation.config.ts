import { statSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'
import { aliases } from './aliases'

/** The first failure ends a run: short files of exact cases come before long ones of random cases. */
class ShortestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const size = (file: TestSpecification) => statSync(file.moduleId).size
    return Promise.resolve([...files].sort((a, b) => size(a) - size(b)))
  }
}

/** The plain models alone, without a browser: what mutation testing runs over and over. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  resolve: { alias: aliases },
  test: {
    environment: 'node',
    testTimeout: 60_000,
    // Pure functions need no world of their own, and loading one for every file of every mutant takes most of the time.
    isolate: false,
    sequence: { sequencer: ShortestFirst },
    setupFiles: [fileURLToPath(new URL('./vitest.mutation.setup.ts', import.meta.url))],
    include: [
      'shared/numerics/**/*.test.ts',
      'shared/physics/**/*.test.ts',
      'shared/rules/**/*.test.ts',
      'shared/wear/**/*.test.ts',
      'tests/fishing-and-wear.test.ts',
    ],
    // Thousands of random pots say nothing about a single figure, and take too long to run for each mutant.
    exclude: ['shared/physics/random-pots.test.ts'],
  },
})
