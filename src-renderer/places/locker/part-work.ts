/** What can be done with one part in a dialog. */
export type Work = 'inspect' | 'replace' | 'repair' | 'move'
