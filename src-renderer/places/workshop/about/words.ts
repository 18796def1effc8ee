/** Words of the page about the program, with the cautions in one place. */
export const aboutWords = {
  name: (version: string) => `Potwright ${version}`,
  edition: 'Edition',
  editions: { desktop: 'Desktop', browser: 'In the browser' },
  runsOn: 'Runs on',
  machine: 'This machine',
  licence: 'Licence',
  mit: 'MIT. What is built in stands under “What this rests on”.',
  cautions: 'Before you go',
  cautionLines: [
    'Local rules and licensed practice decide. Rules change; look at the official ones on the day.',
    'Predictions are not for navigation. Wind and pressure move the water too.',
    'Verdicts are estimates with their spread, not a promise.',
    'Hauling over the side of a small boat tips boats and hurts backs. Share the load, keep low.',
    'Keep rope clear of propellers and feet. Slack rope at the surface catches whales and other animals.',
    'Crabs’ claws break fingers. Cold water and a turning tide take people every season.',
    'A lost pot keeps fishing. Look for it, and report it.',
  ],
} as const
