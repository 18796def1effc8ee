import { settings } from './settings.svelte'

/** As many as a menu shows without scrolling; the shelf has the rest. */
const most = 9

/** Notes that a design lies on the Bench now, before those that lay there last. */
export function rememberPot(id: string): void {
  const before = (settings.current.recentPots ?? []).filter((one) => one !== id)
  void settings.set({ currentPot: id, recentPots: [id, ...before].slice(0, most) })
}
