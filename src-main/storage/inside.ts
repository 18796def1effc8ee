import nodePath from 'node:path'

/**
 * Whether a path lies in a folder, or is that folder itself.
 *
 * @param system how paths are written; by default as on this machine
 */
export function isInside(folder: string, path: string, system: nodePath.PlatformPath = nodePath): boolean {
  const way = system.relative(folder, path)
  // On Windows there is no way from one drive to another, and the answer is the whole path.
  return way !== '..' && !way.startsWith(`..${system.sep}`) && !system.isAbsolute(way)
}
