#!/usr/bin/env node
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { existsSync } from 'node:fs'
import { buildIfStale } from './build.mjs'

/* `npx potwright …` in a clone: builds what is stale, then runs the command line. */

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..')
const isClone = existsSync(join(root, 'electron.vite.config.ts'))

// Standard output belongs to the command.
if (isClone && !(await buildIfStale(root, (line) => process.stderr.write(`${line}\n`)))) process.exit(1)
await import(pathToFileURL(join(root, 'out', 'main', 'potwright.js')).href)
