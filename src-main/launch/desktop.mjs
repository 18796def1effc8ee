import { spawn } from 'node:child_process'

/** Whether a window can be shown at all. */
export function hasDisplay(env = process.env, platform = process.platform) {
  return platform === 'win32' || platform === 'darwin' || Boolean(env.DISPLAY || env.WAYLAND_DISPLAY)
}

/**
 * Whether the desktop runtime ended for want of something on this machine: a library of the system (the loader's 127),
 * or leave to put itself into its sandbox (it stops itself, by a trap).
 */
export function neverCameUp(code, signal) {
  return code === 127 || signal === 'SIGTRAP'
}

/** Opens an address in the user's own browser; where there is none, the printed address has to do. */
export function openInBrowser(address, env = process.env, platform = process.platform) {
  if (env.CI || !hasDisplay(env, platform)) return
  const [program, ...args] = opener(platform, address)
  const child = spawn(program, args, { stdio: 'ignore', detached: true })
  child.on('error', () => undefined)
  child.unref()
}

function opener(platform, address) {
  if (platform === 'darwin') return ['open', address]
  // `start` would take `&` in an address for the end of a command; this takes the address as it is.
  if (platform === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler', address]
  return ['xdg-open', address]
}
