import about from '../package.json'

/** The program's own version. */
export const version: string = about.version
