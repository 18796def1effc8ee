import { packFiles } from '@shared/rules/packs'

/** Hosts of every source that the shipped rules cite; only pages there are opened from the desktop edition. */
export function citedHosts(): ReadonlySet<string> {
  const hosts = new Set<string>()
  for (const pack of packFiles.values()) collectHosts(pack, hosts)
  return hosts
}

function collectHosts(value: unknown, hosts: Set<string>): void {
  if (typeof value === 'string' && value.startsWith('https://') && URL.canParse(value))
    hosts.add(new URL(value).hostname)
  else if (typeof value === 'object' && value !== null)
    for (const inner of Object.values(value)) collectHosts(inner, hosts)
}
