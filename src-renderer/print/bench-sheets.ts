import type { SheetId } from '@renderer/state/route.svelte'

/** The sheets that are about what lies on the Bench. */
export const benchSheets: readonly SheetId[] = ['build', 'check', 'labels']
