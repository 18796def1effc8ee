import { readIfThere } from '@main/storage/document-file'
import type { Reply } from '@shared/contract/contract'

type Licences = Reply<'app:licences'>

/** The licences of everything built in, as the build wrote them beside each of its parts; each package once. */
export async function readLicences(files: readonly string[]): Promise<Licences> {
  const texts = await Promise.all(files.map(readIfThere))
  const all = texts.flatMap((text) => (text === undefined ? [] : (JSON.parse(text) as Licences)))
  const once = new Map(all.map((entry) => [`${entry.name}@${entry.version}`, entry]))
  return [...once.values()].sort((a, b) => (a.name < b.name ? -1 : 1))
}
