import { svelte } from '@sveltejs/vite-plugin-svelte'
import { playwright } from '@vitest/browser-playwright'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'
import { aliases } from './aliases'
import { stationData } from './station-data'

const root = fileURLToPath(new URL('..', import.meta.url))
const electronStandIn = fileURLToPath(new URL('../src-main/window/electron-stand-in.ts', import.meta.url))

const setup = fileURLToPath(new URL('./vitest.setup.ts', import.meta.url))

// Importing the real `electron` outside Electron tries to download it.
const nodeAlias = { ...aliases, electron: electronStandIn }

// A test says whether something is right; how long it takes on a busy machine is no fault.
const slowMachine = 120_000

// Modules hold nothing that one test could leave to another, and reading them anew for each file takes half the time.
const isolate = false

export default defineConfig({
  root,
  test: {
    maxWorkers: 2,
    coverage: {
      provider: 'v8',
      include: ['shared/**/*.ts'],
      exclude: ['**/*.test.ts', '**/*.bench.ts'],
    },
    projects: [
      {
        resolve: { alias: nodeAlias },
        test: {
          name: 'shared',
          testTimeout: slowMachine,
          environment: 'node',
          isolate,
          setupFiles: [setup],
          include: ['shared/**/*.test.ts'],
          benchmark: { include: ['tests/bench/**/*.bench.ts'] },
        },
      },
      {
        resolve: { alias: nodeAlias },
        plugins: [stationData()],
        test: {
          name: 'main',
          testTimeout: slowMachine,
          environment: 'node',
          isolate,
          setupFiles: [setup],
          include: ['src-main/**/*.test.ts', 'tests/*.test.ts', 'assets/**/*.test.ts'],
          benchmark: { include: [] },
        },
      },
      {
        resolve: { alias: aliases, conditions: ['browser'] },
        // Found only while tests run, they would make the page load again in the middle of one.
        optimizeDeps: {
          include: [
            ...['valibot', 'luxon', 'papaparse', 'suncalc', 'tz-lookup', 'ulid', 'fast-check', 'axe-core'],
            ...['d3-array', 'd3-geo', 'd3-scale', 'd3-shape', 'topojson-client', '@neaps/tide-predictor'],
            ...['three', 'three/addons/controls/OrbitControls.js'],
            ...['three/addons/geometries/RoundedBoxGeometry.js', 'three/addons/utils/BufferGeometryUtils.js'],
          ],
        },
        // Prebundled Svelte libraries bring a second copy of the runtime, whose effects the page's own does not know.
        plugins: [
          svelte({ configFile: false, prebundleSvelteLibraries: false, compilerOptions: { runes: true } }),
        ],
        test: {
          name: 'renderer',
          testTimeout: slowMachine,
          include: ['src-renderer/**/*.browser.test.ts'],
          benchmark: { include: [] },
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({
              launchOptions: {
                executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
                args: [
                  '--no-sandbox',
                  '--use-angle=swiftshader',
                  '--enable-unsafe-swiftshader',
                  '--ignore-gpu-blocklist',
                  '--no-first-run',
                  '--disable-background-networking',
                  '--disable-component-update',
                  '--disable-sync',
                  '--disable-quic',
                ],
              },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
    ],
  },
})
