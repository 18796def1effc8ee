import { type Disk, realDisk } from './durable-write'

/* Test support: a disk that fails on command. */

const fault = (code: string) => Object.assign(new Error(`${code}: made to fail`), { code })

/** The real disk, except that writing and syncing fail with a code, and the first renames with one each. */
export function failing(faults: { write?: string; sync?: string; rename?: readonly string[] }): Disk {
  const renames = [...(faults.rename ?? [])]
  return {
    ...realDisk,
    open: async (path, flags) => {
      const handle = await realDisk.open(path, flags)
      const { write, sync } = faults
      if (write !== undefined) {
        handle.writeFile = () => Promise.reject(fault(write))
        handle.appendFile = () => Promise.reject(fault(write))
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
