import { rename } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import { timeStamp } from './time-stamp'

/** Moves a file that cannot be read out of the way, beside where it was, and returns its new name. */
export async function setAside(path: string, now: Date): Promise<string> {
  const name = `${basename(path)}.bad-${timeStamp(now)}.json`
  await rename(path, join(dirname(path), name))
  return name
}

export const isSetAside = (fileName: string) => /\.bad-\d{8}-\d{6}\.jsonl?$/.test(fileName)
