import type { Reply } from '@shared/contract/contract'
import { readIfThere } from '@main/storage/document-file'

/** The licences of everything built in, as the build wrote them beside the program. */
export async function readLicences(path: string): Promise<Reply<'app:licences'>> {
  const text = await readIfThere(path)
  return text === undefined ? [] : (JSON.parse(text) as Reply<'app:licences'>)
}
