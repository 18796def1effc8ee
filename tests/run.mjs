import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { fetchedRuntime } from './e2e/electron-runtime.mjs'

/*
 * `npm test`: every check of the project one after the other, with the time each took. The last line is the sum:
 * `N passed, N failed`, with the skipped where there are some.
 */

const root = join(dirname(fileURLToPath(import.meta.url)), '..')
const reports = join(root, 'reports')
const bin = (name) => join(root, 'node_modules', '.bin', name)
const total = { passed: 0, failed: 0, skipped: 0 }
const trouble = []

rmSync(reports, { recursive: true, force: true })
mkdirSync(reports, { recursive: true })

const eslint = [bin('eslint'), '-c', '.config/eslint.config.js', '.', '--max-warnings', '0']
await check('lint', eslint)
await check('format', [bin('prettier'), '--check', '--log-level', 'warn', '.'])
await check('types', [bin('tsc'), '--noEmit', '-p', 'tsconfig.json'])
await check('types of components', [
  bin('svelte-check'),
  ...['--tsconfig', './tsconfig.json', '--fail-on-warnings', '--output', 'human'],
])
await vitest('units and published values', '.config/vitest.config.ts', [
  '--project',
  'shared',
  '--project',
  'main',
])
await vitest('components in a browser', '.config/vitest.config.ts', ['--project', 'renderer'])
await check('build', [bin('electron-vite'), 'build'])
if (fetchedRuntime() === undefined)
  say(
    '\n!! The desktop runtime for tests is not here, so the desktop journeys are SKIPPED. Fetch it: node tests/e2e/electron-runtime.mjs',
  )
await vitest('journeys', '.config/vitest.e2e.config.ts', [], screen())

for (const line of trouble) say(`failed: ${line}`)
const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : ''
say(`\n${total.passed} passed, ${total.failed} failed${skipped}`)
process.exitCode = total.failed > 0 ? 1 : 0

/** A check that passes or fails as a whole and counts as one. */
async function check(name, command) {
  const code = await stage(name, command)
  if (code === 0) total.passed++
  else fail(name)
}

/** Tests that count themselves. */
async function vitest(name, config, args, before = []) {
  const report = join(reports, `${name.replaceAll(' ', '-')}.json`)
  const code = await stage(name, [
    ...before,
    ...[bin('vitest'), 'run', '-c', config, ...args],
    ...['--reporter', 'dot', '--reporter', 'json', `--outputFile.json=${report}`],
  ])
  if (!existsSync(report)) return fail(`${name} (no report)`)
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests, testResults } = JSON.parse(
    readFileSync(report, 'utf8'),
  )
  total.passed += numPassedTests
  total.failed += numFailedTests
  total.skipped += numPendingTests + numTodoTests
  if (numFailedTests > 0) trouble.push(`${name}: ${numFailedTests} of ${numPassedTests + numFailedTests}`)
  else if (code !== 0) fail(`${name} (ended with ${code})`)
  const failed = testResults
    .flatMap(({ assertionResults }) => assertionResults)
    .filter(({ status }) => status === 'failed')
  for (const { fullName, failureMessages } of failed)
    trouble.push(`  ${fullName}: ${failureMessages[0]?.split('\n')[0]}`)
}

function fail(name) {
  total.failed++
  trouble.push(name)
}

async function stage(name, [program, ...args]) {
  say(`\n== ${name}`)
  const start = Date.now()
  const child = spawn(program, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, CI: '1', VITE_CONFIG_NATIVE_IGNORE_WARNING: 'true' },
  })
  const code = await new Promise((done) => {
    child.on('error', () => done(1))
    child.on('close', (ended) => done(ended ?? 1))
  })
  say(`-- ${name}: ${code === 0 ? 'done' : 'FAILED'} in ${((Date.now() - start) / 1000).toFixed(1)} s`)
  return code
}

/** What to put before a command that opens windows, where there is no screen. */
function screen() {
  if (process.env.DISPLAY || process.platform !== 'linux') return []
  const found = ['/usr/bin/xvfb-run', '/bin/xvfb-run'].find((path) => existsSync(path))
  return found ? [found, '-a'] : []
}

function say(line) {
  process.stdout.write(`${line}\n`)
}
