import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach } from 'vitest'

/** Test support: gives each test of a file a fresh folder, removed after it. */
export function temporaryFolder(): () => string {
  let folder = ''
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'potwright-test-'))
  })
  afterEach(async () => {
    await rm(folder, { recursive: true, force: true })
  })
  return () => folder
}
