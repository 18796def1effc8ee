import type { PartName } from '@shared/schema/check'

/** The compartments of the parts tray, in the order in which a pot is built. */
export const partIds = [
  'body',
  'frame',
  'ballast',
  'netting',
  'entrances',
  'doors',
  'chafe',
  'bait',
  'escape-gaps',
  'release',
  'bridle',
  'rope',
  'float',
  'marks',
  'catch',
  'stow',
] as const
export type PartId = (typeof partIds)[number]

/** Which compartment holds what a finding is about; the trip and the water are on the strip. */
export function compartmentOf(part: PartName): PartId | undefined {
  switch (part) {
    case 'base-ring':
    case 'middle-ring':
    case 'top-ring':
    case 'strut':
    case 'cross-bar':
      return 'frame'
    case 'trip':
    case 'water':
      return undefined
    default:
      return part
  }
}

/** Which part the view should mark while a compartment is open. */
export function markedPart(id: PartId): PartName | undefined {
  return id === 'stow' ? undefined : id
}

/** Which compartment holds a field of the design, as `entrances.0.widthMm`. */
export function compartmentOfPath(path: string): PartId {
  const [field = ''] = path.split('.')
  const named = { escapeGaps: 'escape-gaps', catchKg: 'catch', markerFloat: 'float' } as const
  return partIds.find((id) => id === field) ?? named[field as keyof typeof named] ?? 'body'
}
