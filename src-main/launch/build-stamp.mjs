import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'

const sources = [
  'shared',
  'src-main',
  'src-renderer',
  'assets',
  '.config',
  'electron.vite.config.ts',
  'package.json',
]
const built = [
  'out/main/index.js',
  'out/main/potwright.js',
  'out/preload/preload.cjs',
  'out/renderer/index.html',
]

/** Whether what is built is older than what it was built from, or is not all there. */
export function isStale(root) {
  const times = built.map((file) => modified(join(root, file)))
  if (times.includes(undefined)) return true
  return newest(sources.map((source) => join(root, source))) > Math.min(...times)
}

function newest(paths) {
  let latest = 0
  for (const path of paths) {
    const found = statSync(path, { throwIfNoEntry: false })
    if (!found) continue
    if (!found.isDirectory()) latest = Math.max(latest, path.endsWith('.test.ts') ? 0 : found.mtimeMs)
    else latest = Math.max(latest, newest(readdirSync(path).map((name) => join(path, name))))
  }
  return latest
}

function modified(path) {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs
}
