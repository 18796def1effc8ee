import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { isStale } from './build-stamp.mjs'

/** Builds what is stale; its output is shown only where it fails. Resolves to whether there is a build. */
export async function buildIfStale(root, say) {
  if (!isStale(root)) return true
  say('Building Potwright. This takes a few seconds.')
  const builder = join(root, 'node_modules', 'electron-vite', 'bin', 'electron-vite.js')
  const { code, output } = await quietly(process.execPath, [builder, 'build'], root)
  if (code !== 0) say(`${output}\nThe build failed. If packages are missing, run “npm ci” first.`)
  return code === 0
}

/** Runs a program and keeps what it prints. */
export function quietly(program, args, cwd, { timeoutMs = 0 } = {}) {
  return new Promise((done) => {
    const child = spawn(program, args, { cwd, stdio: ['ignore', 'pipe', 'pipe'], timeout: timeoutMs })
    let output = ''
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => (output += part))
    child.on('error', (error) => done({ code: 1, output: error.message }))
    child.on('close', (code) => done({ code: code ?? 1, output }))
  })
}
