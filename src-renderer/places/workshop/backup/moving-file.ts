import { partBytes } from '@shared/contract/backup'
import type { Result } from '@shared/units/result'
import { bridge } from '@renderer/state/bridge'
import { offerBlob } from '@renderer/state/file-exchange'

/* The file that moves house goes over in parts, so that neither side holds hundreds of photos at once. */

/** Told how much of a file went over, from 0 to 1. */
type Tell = (share: number) => void

/** Hands everything to the reader as a file to keep; returns photos that cannot be read and are not in it. */
export async function saveEverything(tell: Tell): Promise<Result<string[]>> {
  const begun = await bridge('backup:export', {})
  if (!begun.ok) return begun
  const { transfer, fileName, bytes, lost } = begun.value
  const parts: Blob[] = []
  for (let last = false, got = 0; !last;) {
    const part = await bridge('backup:export-part', { transfer })
    if (!part.ok) return part
    const blob = new Blob([bytesOf(part.value.base64)])
    parts.push(blob)
    got += blob.size
    last = part.value.last
    tell(Math.min(1, got / bytes))
  }
  offerBlob(fileName, new Blob(parts, { type: 'application/zip' }))
  return { ok: true, value: lost }
}

/** Takes in a file that was saved on another machine; returns the backup that it became here. */
export async function handOver(file: File, tell: Tell): Promise<Result<{ id: string }>> {
  let transfer: string | undefined
  let at = 0
  do {
    const base64 = await base64Of(file.slice(at, at + partBytes))
    const part = await bridge(
      'backup:import-part',
      transfer === undefined ? { base64 } : { transfer, base64 },
    )
    if (!part.ok) return part
    transfer = part.value.transfer
    at += partBytes
    tell(Math.min(1, at / file.size))
  } while (at < file.size)
  return bridge('backup:import', { transfer })
}

const bytesOf = (base64: string) => Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))

function base64Of(part: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader()
    reader.onload = () => resolve(String(reader.result).replace(/^[^,]*,?/, ''))
    reader.onerror = () => reject(reader.error ?? new Error('not readable'))
    reader.readAsDataURL(part)
  })
}
