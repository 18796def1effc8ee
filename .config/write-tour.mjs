import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/* `npm run tour`: walks a stranger's way through the built program and keeps a picture of each step. */

const root = fileURLToPath(new URL('..', import.meta.url))
const bin = (name) => join(root, 'node_modules', '.bin', name)
const env = { ...process.env, POTWRIGHT_TOUR: '1' }

for (const [program, ...args] of [
  [bin('electron-vite'), 'build', '--logLevel', 'warn'],
  [bin('vitest'), 'run', '-c', '.config/vitest.e2e.config.ts', 'tests/e2e/walk.test.ts'],
]) {
  const { status } = spawnSync(program, args, { cwd: root, env, stdio: 'inherit' })
  if (status !== 0) process.exit(status ?? 1)
}
