/** Takes a document of version n to version n + 1. Pure, and never edited once released. */
export type Migration = (old: Record<string, unknown>) => Record<string, unknown>

/** Brings an older document up to date; `migrations[0]` takes version 1 to 2. Others come back as they are. */
export function migrate(raw: unknown, migrations: readonly Migration[]): unknown {
  if (!isObject(raw)) return raw
  const version = raw['version']
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return raw
  return migrations.slice(version - 1).reduce((document, step) => step(document), raw)
}

function isObject(raw: unknown): raw is Record<string, unknown> {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw)
}
