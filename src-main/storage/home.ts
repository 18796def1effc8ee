import { homedir } from 'node:os'
import { join } from 'node:path'

/**
 * The folder for what belongs to this machine alone: its identity, its window, and the data folder unless
 * another is named. The same for the desktop edition, the browser edition and the command line.
 */
export function homeFolder(
  env: Readonly<Record<string, string | undefined>>,
  platform: NodeJS.Platform,
  userHome: string = homedir(),
): string {
  if (env['POTWRIGHT_HOME']) return env['POTWRIGHT_HOME']
  if (platform === 'win32') return join(env['APPDATA'] ?? join(userHome, 'AppData', 'Roaming'), 'Potwright')
  if (platform === 'darwin') return join(userHome, 'Library', 'Application Support', 'Potwright')
  return join(env['XDG_CONFIG_HOME'] || join(userHome, '.config'), 'potwright')
}

export const defaultDataFolder = (home: string) => join(home, 'data')
