import { svelte } from '@sveltejs/vite-plugin-svelte'
import { defineConfig } from 'electron-vite'
import { aliases } from './.config/aliases'
import { licences } from './.config/licences'
import { stationData } from './.config/station-data'

const mainLicences = licences(['@neaps/tide-database'])
const pageLicences = licences()

// Every runtime library is a development dependency: it is bundled, and the package ships `out/` alone.
export default defineConfig({
  main: {
    resolve: { alias: aliases },
    plugins: [stationData(), mainLicences.page],
    build: {
      target: 'node20.18',
      rolldownOptions: {
        input: { index: 'src-main/index.ts', potwright: 'src-main/cli/potwright.ts' },
      },
    },
  },
  preload: {
    resolve: { alias: aliases },
    build: {
      target: 'node20.18',
      externalizeDeps: false,
      rolldownOptions: {
        input: { preload: 'src-main/preload.ts' },
        // A sandboxed preload has to be a single CommonJS file.
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: 'src-renderer',
    resolve: { alias: aliases },
    // `svelte.config.js` is looked for in the renderer's root, so the options are given here.
    plugins: [svelte({ configFile: false, compilerOptions: { runes: true } }), pageLicences.page],
    worker: { format: 'es', plugins: pageLicences.workers },
    build: {
      target: 'chrome130',
      minify: true,
      rolldownOptions: { input: { index: 'src-renderer/index.html' } },
    },
  },
})
