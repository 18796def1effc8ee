import { spawnSync } from 'node:child_process'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/* `npm run bench`: what the computing costs, then what the built program costs. Prints; timings never fail it. */

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..')
const bin = (name) => join(root, 'node_modules', '.bin', name)
const env = { ...process.env, VITE_CONFIG_NATIVE_IGNORE_WARNING: 'true' }

const stages = [
  ['build', [bin('electron-vite'), 'build', '--logLevel', 'warn']],
  ['computing', [bin('vitest'), 'bench', '--run', '-c', '.config/vitest.config.ts']],
  ['program', [bin('vitest'), 'run', '-c', '.config/vitest.program.config.ts', '--reporter', 'dot']],
]

for (const [name, [program, ...args]] of stages) {
  process.stdout.write(`\n== ${name}\n`)
  const { status } = spawnSync(program, args, { cwd: root, env, stdio: 'inherit' })
  if (status !== 0) process.exitCode = 1
}
