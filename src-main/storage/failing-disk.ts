import { type Disk, realDisk } from './durable-write'

/* Test support: a disk that fails on command. */

const fault = (code: string) => Object.assign(new Error(`${code}: made to fail`), { code })

/** A disk fills up in the middle of what is written: half of it is there. */
const half = (content: unknown) => (typeof content === 'string' ? content.slice(0, content.length / 2) : '')

/** The real disk, except that writing and syncing fail with a code, and renames in turn with one each where named. */
export function failing(faults: {
  write?: string
  sync?: string
  rename?: readonly (string | undefined)[]
}): Disk {
  const renames = [...(faults.rename ?? [])]
  return {
    ...realDisk,
    open: async (path, flags) => {
      const handle = await realDisk.open(path, flags)
      const { write, sync } = faults
      if (write !== undefined) {
        const fillUp = async (content: unknown) => {
          await handle.write(half(content))
          throw fault(write)
        }
        handle.writeFile = fillUp
        handle.appendFile = fillUp
      }
      if (sync !== undefined) handle.sync = () => Promise.reject(fault(sync))
      return handle
    },
    rename: (from, to) => {
      const code = renames.shift()
      return code === undefined ? realDisk.rename(from, to) : Promise.reject(fault(code))
    },
  }
}
