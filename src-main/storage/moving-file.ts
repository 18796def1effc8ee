import { open, readFile, stat } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { buffer } from 'node:stream/consumers'
import { crc32 } from 'node:zlib'
import type { Entry, ZipFile as OpenZip } from 'yauzl'
import { openPromise } from 'yauzl'
import { ZipFile } from 'yazl'
import type { Backup, BackupPhoto } from '@shared/schema/backup'
import { err, ok, type Result } from '@shared/units/result'
import { backupKind } from './backup-archive'
import { documentText, parseDocument } from './document-file'
import { errnoCode } from './storage-fault'

/*
 * Everything in one file, `*.backup.zip`, to move to another machine: `backup.json`, and `photos/<file>` for each
 * photo that it names. Nothing is ever unpacked by the name that stands in the file.
 */

const backupName = 'backup.json'
const nameOf = ({ file }: BackupPhoto) => `photos/${file}`

// The journal of many years. A longer text could not be held as one.
const longestBackupBytes = 200_000_000

// What is written again and again packs well; said too high, a bar of progress only ends early.
const packsTo = 1 / 10

/**
 * The file as a stream, made as it is read, so that it never stands in memory or on the disk whole, and about how
 * large it will be.
 */
export function packMovingFile(
  backup: Backup,
  pathOf: (photo: BackupPhoto) => string,
): { stream: Readable; bytes: number } {
  const zip = new ZipFile()
  const mtime = new Date(backup.writtenAt)
  const text = Buffer.from(documentText(backup))
  zip.addBuffer(text, backupName, { mtime })
  for (const photo of backup.photos) zip.addFile(pathOf(photo), nameOf(photo), { mtime, compress: false })
  zip.end()
  const stream = zip.outputStream as Readable
  zip.on('error', (thrown: Error) => stream.destroy(thrown))
  const photos = backup.photos.reduce((sum, photo) => sum + photo.bytes, 0)
  return { stream, bytes: Math.round(text.length * packsTo + photos) }
}

export interface MovingFile {
  readonly backup: Backup
  /** What stands in the file for a photo; empty where nothing does. */
  readonly photo: (photo: BackupPhoto) => AsyncIterable<Uint8Array>
  readonly close: () => void
}

/** Opens the file of today, or the plain JSON that the first backups were. */
export async function openMovingFile(path: string): Promise<Result<MovingFile>> {
  if (!(await isZip(path))) {
    if ((await stat(path)).size > longestBackupBytes) return err(damaged)
    const backup = parseDocument(await readFile(path, 'utf8'), backupKind)
    return backup.ok ? ok({ backup: backup.value, photo: nothing, close: () => undefined }) : backup
  }
  let zip: OpenZip | undefined
  try {
    const opened = (zip = await openPromise(path, { lazyEntries: true, autoClose: false }))
    const entries = new Map<string, Entry>()
    for await (const entry of opened.eachEntry()) entries.set(entry.fileName, entry)
    const backup = await readBackup(opened, entries.get(backupName))
    if (!backup.ok) {
      opened.close()
      return backup
    }
    return ok({
      backup: backup.value,
      photo: (photo) => contentOf(opened, entries.get(nameOf(photo))),
      close: () => opened.close(),
    })
  } catch (thrown) {
    zip?.close()
    if (errnoCode(thrown) !== undefined || !(thrown instanceof Error)) throw thrown
    return err(damaged) // what else a zip file can have wrong, its reader says in words of its own
  }
}

async function isZip(path: string): Promise<boolean> {
  const file = await open(path)
  try {
    const { buffer: start } = await file.read(Buffer.alloc(2), 0, 2, 0)
    return start.toString('latin1') === 'PK'
  } finally {
    await file.close()
  }
}

async function readBackup(zip: OpenZip, entry: Entry | undefined): Promise<Result<Backup>> {
  if (!entry) return err({ code: 'invalid', message: 'This is a zip file, but no backup of Potwright.' })
  if (entry.uncompressedSize > longestBackupBytes) return err(damaged)
  const bytes = await buffer(contentOf(zip, entry))
  return crc32(bytes) === entry.crc32 ? parseDocument(bytes.toString('utf8'), backupKind) : err(damaged)
}

const nothing = () => Readable.from([])

async function* contentOf(zip: OpenZip, entry: Entry | undefined): AsyncGenerator<Uint8Array> {
  if (entry) yield* await zip.openReadStreamPromise(entry)
}

const damaged = { code: 'invalid' as const, message: 'This file is damaged. Nothing was taken from it.' }
