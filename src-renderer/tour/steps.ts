/** A stop of the tour: the control it points at, by what the page calls it, and what it is for. */
export interface TourStep {
  readonly target: string
  readonly title: string
  readonly text: string
}

export const tourSteps: readonly TourStep[] = [
  {
    target: '[role="tablist"][aria-label="Parts"]',
    title: 'The parts',
    text: 'Each drawer is one part of the pot. Open one and change it; a mark shows where something does not hold. Leave a part out if you do not know it: then what depends on it says so.',
  },
  {
    target: '.bench > :first-child',
    title: 'Where, when and who',
    text: 'Depth, current, bottom, region and date. Type them in for a quick look, or choose a water that you keep under Waters.',
  },
  {
    target: '[role="tabpanel"]:has(canvas), section[aria-label="The pot"]',
    title: 'The pot itself',
    text: 'Turn it with the mouse or the arrow keys. Click a part to open its drawer. Beside it you find why a verdict falls as it does, and what to cut and buy.',
  },
  {
    target: 'section[aria-label="Verdicts"]',
    title: 'Six verdicts',
    text: 'Holds, close, fails or cannot tell, each with its margin. Open one for its findings; every finding says where it comes from.',
  },
  {
    target: 'nav[aria-label="Places"]',
    title: 'The round of a season',
    text: 'From the Bench to the waters, your own pots, the days out and what to mend before the next season. Each step feeds the next.',
  },
  {
    target: 'header .tools',
    title: 'Find anything',
    text: 'Type what you want to do, see every key, and set units and look. This tour is found again here, under its name.',
  },
]
