export const liftZones = ['head', 'shoulder', 'elbow', 'knuckle', 'lower leg'] as const
export type LiftZone = (typeof liftZones)[number]
export type LiftReach = 'close to body' | 'arms extended'
export type Lifter = 'men' | 'women'

const filter: Readonly<Record<Lifter, Readonly<Record<LiftReach, Readonly<Record<LiftZone, number>>>>>> = {
  men: {
    'close to body': { head: 10, shoulder: 20, elbow: 25, knuckle: 20, 'lower leg': 10 },
    'arms extended': { head: 5, shoulder: 10, elbow: 15, knuckle: 10, 'lower leg': 5 },
  },
  women: {
    'close to body': { head: 7, shoulder: 13, elbow: 16, knuckle: 13, 'lower leg': 7 },
    'arms extended': { head: 3, shoulder: 7, elbow: 10, knuckle: 7, 'lower leg': 3 },
  },
}

/**
 * Mass below which a lift with two hands, now and then, needs no closer look. A filter, not a limit.
 *
 * Reaching over a gunwale is with arms extended.
 *
 * @param lifter whose filter
 * @param zone   height of the hands
 * @param reach  close to the body, or with arms extended
 * @returns mass [kg]
 * @source HSE, Manual Handling Operations Regulations guidance L23 / INDG143; arms extended from memory
 */
export function liftGuideline(lifter: Lifter, zone: LiftZone, reach: LiftReach): number {
  return filter[lifter][reach][zone]
}
