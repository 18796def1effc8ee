import { spawn } from 'node:child_process'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { buildIfStale } from './build.mjs'
import { electronProgram, fetchElectron } from './electron-program.mjs'
import { hasDisplay, openInBrowser } from './desktop.mjs'

/*
 * `npm start`: builds what is stale, then opens the desktop window, or the browser edition where the desktop
 * runtime cannot be had. Arguments such as `--data DIR` and `--port N` are passed on.
 */

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..')
const say = (line) => process.stdout.write(`${line}\n`)
const { browserOnly, rest } = split(process.argv.slice(2))

if (!(await buildIfStale(root, say))) process.exit(1)

const reason = browserOnly ? 'you asked for it' : await whyNoWindow()
if (reason === undefined) openWindow()
else openBrowserEdition(reason)

/** Why the desktop window cannot be opened, or undefined where it can. */
async function whyNoWindow() {
  if (!hasDisplay()) return 'there is no display here'
  if (electronProgram(root)) return undefined
  const trouble = await fetchElectron(root, say)
  return trouble && `the desktop runtime is not here and ${trouble}`
}

function openWindow() {
  const child = spawn(electronProgram(root), ['.', ...rest], { cwd: root, stdio: 'inherit' })
  child.on('error', (error) => openBrowserEdition(`the desktop runtime did not start (${error.message})`))
  child.on('close', (code) => (process.exitCode = code ?? 1))
}

function openBrowserEdition(reason) {
  say(`Opening the browser edition, because ${reason}.`)
  if (!browserOnly)
    say('For the desktop window, run “npx install-electron” with a connection, then “npm start” again.')
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
