import { spawn } from 'node:child_process'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { buildIfStale } from './build.mjs'
import { electronProgram, fetchElectron } from './electron-program.mjs'
import { hasDisplay, neverCameUp, openInBrowser } from './desktop.mjs'

/*
 * `npm start`: builds what is stale, then opens the desktop window, or the browser edition where the desktop
 * runtime cannot be had. Arguments such as `--data DIR` and `--port N` are passed on.
 */

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..')
const say = (line) => process.stdout.write(`${line}\n`)
const { browserOnly, rest } = split(process.argv.slice(2))

if (!(await buildIfStale(root, say))) process.exit(1)

if (browserOnly) openBrowserEdition('you asked for it')
else await openWindow()

async function openWindow() {
  if (!hasDisplay())
    return openBrowserEdition('there is no display here', 'run “npm start” where there is a screen')
  const trouble = electronProgram(root) ? undefined : await fetchElectron(root, say)
  if (trouble)
    return openBrowserEdition(
      `the desktop runtime is not here and ${trouble}`,
      'run “npx install-electron” with a connection, then “npm start” again',
    )
  const child = spawn(electronProgram(root), ['.', ...rest], { cwd: root, stdio: 'inherit' })
  const orElse = (why) => openBrowserEdition(`the desktop window did not come up: ${why}`)
  child.on('error', (error) => orElse(error.message))
  child.on('close', (code, signal) => {
    if (neverCameUp(code, signal)) orElse('the runtime’s own words stand above')
    else process.exitCode = code ?? 1
  })
}

/** Opens the browser edition, says why, and what would bring the desktop window. */
function openBrowserEdition(reason, help) {
  say(`Opening the browser edition, because ${reason}.`)
  if (help) say(`For the desktop window, ${help}.`)
  const args = [join(root, 'out', 'main', 'potwright.js'), 'serve', ...rest]
  const child = spawn(process.execPath, args, { stdio: ['inherit', 'pipe', 'inherit'] })
  let seen = ''
  child.stdout.on('data', (part) => {
    process.stdout.write(part)
    if (seen === undefined) return
    seen += part
    const address = /http:\/\/127\.0\.0\.1:\d+\/\?token=\S+/.exec(seen)?.[0]
    if (!address) return
    seen = undefined
    openInBrowser(address)
  })
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal))
  child.on('close', (code) => (process.exitCode = code ?? 1))
}

function split(args) {
  return { browserOnly: args.includes('--browser'), rest: args.filter((arg) => arg !== '--browser') }
}
