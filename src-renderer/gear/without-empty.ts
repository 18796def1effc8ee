type Filled<T> = { [K in keyof T]?: Exclude<T[K], undefined> }

/** Leaves out what was not filled in: an event says only what somebody said. */
export function withoutEmpty<T extends object>(fields: T): Filled<T> {
  return Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined && value !== ''),
  ) as Filled<T>
}
