/** The rule packs that are shipped, by region, as they stand in `assets/rules`. */
export const builtInPacks: ReadonlyMap<string, Record<string, unknown>> = new Map(
  Object.entries(
    import.meta.glob<Record<string, unknown>>('@assets/rules/*.json', { eager: true, import: 'default' }),
  ).map(([path, pack]) => [
    path
      .split('/')
      .at(-1)
      ?.replace(/(\.rules)?\.json$/, '') ?? path,
    pack,
  ]),
)
