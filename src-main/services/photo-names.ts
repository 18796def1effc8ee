import { JournalBook } from '@shared/journal/book'
import type { JournalEvent } from '@shared/schema/journal'

/** Says of files which photos they are, as "Photo of pot 7, chafe by the eye (….jpg)"; the file alone where no event names it. */
export function photoNames(files: readonly string[], events: readonly JournalEvent[], now: Date): string[] {
  if (files.length === 0) return []
  const { pots } = new JournalBook([events], now.getTime()).state
  const known = new Map(
    Object.values(pots).flatMap(({ number, photos }) =>
      photos.map(({ file, caption }) => [
        file,
        [`Photo of pot ${number}`, caption].filter(Boolean).join(', '),
      ]),
    ),
  )
  return files.map((file) =>
    [known.get(file), known.has(file) ? `(${file})` : file].filter(Boolean).join(' '),
  )
}
