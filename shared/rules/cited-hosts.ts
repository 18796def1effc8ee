/**
 * Hosts of every `https:` page that rule packs cite, wherever in a pack it stands.
 *
 * @param packs rule packs, read or as plain JSON
 */
export function citedHosts(packs: Iterable<unknown>): ReadonlySet<string> {
  const hosts = new Set<string>()
  for (const pack of packs) collectHosts(pack, hosts)
  return hosts
}

function collectHosts(value: unknown, hosts: Set<string>): void {
  if (typeof value === 'string') {
    if (value.startsWith('https://') && URL.canParse(value)) hosts.add(new URL(value).hostname)
  } else if (typeof value === 'object' && value !== null)
    for (const inner of Object.values(value)) collectHosts(inner, hosts)
}

/**
 * Whether an address may be opened from the program: a plain `https:` page at its usual port, on a host that the
 * shipped rules cite, with no name or password in it.
 *
 * @param address what the link says
 * @param hosts   hosts that the shipped rules cite
 */
export function isCitedPage(address: string, hosts: ReadonlySet<string>): boolean {
  if (!URL.canParse(address)) return false
  const { protocol, hostname, username, password, port } = new URL(address)
  const isPlain = protocol === 'https:' && username === '' && password === '' && port === ''
  return isPlain && hosts.has(hostname)
}
