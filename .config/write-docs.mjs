import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { runnerImport } from 'vite'

/* `npm run docs`: writes the list of models and figures anew, from the code. */

const root = fileURLToPath(new URL('..', import.meta.url))
const folder = join(root, 'assets/docs')
const alias = { '@shared': join(root, 'shared'), '@assets': join(root, 'assets') }
const { modelDocs } = (await runnerImport(join(root, '.config/model-docs.ts'), { root, resolve: { alias } }))
  .module

mkdirSync(folder, { recursive: true })
const files = modelDocs(root)
for (const [name, text] of files) writeFileSync(join(folder, name), text)
process.stdout.write(`${[...files.keys()].join(' and ')} written to assets/docs.\n`)
