import { fileURLToPath } from 'node:url'

const folder = (name: string) => fileURLToPath(new URL(`../${name}`, import.meta.url))

/** Import aliases, the same for the build, the tests and the type checker. */
export const aliases = {
  '@shared': folder('shared'),
  '@main': folder('src-main'),
  '@renderer': folder('src-renderer'),
  '@assets': folder('assets'),
}
