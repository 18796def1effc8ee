import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'

const folderOf = (path: string) => fileURLToPath(new URL(path, import.meta.url))

/** Test support: the path of a source beside the tests, as a program made for a test imports it. */
export const sourceOf = (name: string) => JSON.stringify(folderOf(name))

const alias = { '@shared': folderOf('../../shared'), '@main': folderOf('..') }

/** Test support: makes a program of its own from a text that imports the sources under test, to be run and killed. */
export async function builtProgram(folder: string, text: string): Promise<string> {
  const entry = join(folder, 'program.ts')
  await writeFile(entry, text)
  await build({
    configFile: false,
    logLevel: 'silent',
    resolve: { alias },
    // One file, so that it starts at once.
    ssr: { noExternal: true },
    build: {
      ssr: entry,
      outDir: join(folder, 'built'),
      rolldownOptions: { output: { entryFileNames: 'program.mjs' } },
    },
  })
  return join(folder, 'built', 'program.mjs')
}
