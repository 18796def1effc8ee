import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { runnerImport } from 'vite'

/* `npm run schemas`: writes the published JSON Schemas anew. */

const root = fileURLToPath(new URL('..', import.meta.url))
const folder = join(root, 'assets/schemas')

const load = async (file) => (await runnerImport(join(root, file), { root, resolve: { alias } })).module
const alias = { '@shared': join(root, 'shared') }
const { jsonSchemaFiles } = await load('.config/json-schemas.ts')

const files = jsonSchemaFiles()
mkdirSync(folder, { recursive: true })
for (const name of readdirSync(folder)) if (!files.has(name)) rmSync(join(folder, name))
for (const [name, text] of files) writeFileSync(join(folder, name), text)
process.stdout.write(`${files.size} schemas written to assets/schemas.\n`)
