import { join } from 'node:path'
import { afterEach } from 'vitest'
import { temporaryFolder } from '@main/storage/temporary-folder'
import type { Services } from './create-services'
import { openTestServices } from './open-test-services'

type More = Parameters<typeof openTestServices>[2] & {
  /** Within the test's folder, where a test has several. */
  readonly folder?: string
}

/** Test support: a fresh folder for each test, and services on it that are closed when the test is over. */
export function servicesInTests() {
  const data = temporaryFolder()
  const opened: Services[] = []
  afterEach(() => {
    for (const services of opened.splice(0)) services.close()
  })
  const services = async (machine = 'shed', { folder = '.', ...more }: More = {}) => {
    const started = await openTestServices(join(data(), folder), machine, more)
    opened.push(started)
    return started
  }
  return { data, services }
}
