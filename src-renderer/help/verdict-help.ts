import type { VerdictName } from '@shared/schema/check'

/** What each verdict asks, what it leaves out, and what usually helps. */
export const verdictHelp: Readonly<Record<VerdictName, readonly string[]>> = {
  legal: [
    'Held against every rule found for this region, zone, date and trip. A rule that was not found is unknown, never absent.',
    'Rules change. The official rules of the day decide.',
  ],
  holdsBottom: [
    'The push of the current on the pot and the pull of rope and float, against the grip of the bottom and the weight on it.',
    'A heavier base ring, a thinner rope or a smaller float helps most. Grip is the least sure of all the inputs.',
  ],
  floatShows: [
    'Whether the float stays up at high water and at full run, with the rope that there is.',
    'More rope or a larger float helps; more rope also swings wider.',
  ],
  lifts: [
    'The greatest pull on the haul, against what a person can lift again and again, and what the rope bears.',
    'Mud, weed and a jerking boat count. Share the haul, or use a hauler.',
  ],
  fishes: [
    'Whether bait lasts the soak, a legal crab gets in, a small one gets out, and the pot lands base down.',
    'It never says how many crabs.',
  ],
  stows: [
    'Folded size and weight of all pots carried, against the space and load you gave in the drawer Stowage.',
  ],
}
