import type { Outlook } from '@shared/physics/coefficients'
import type { PartName } from '@shared/schema/check'

export const whyWords = {
  unknown:
    'Not enough is known to draw the forces. Give the current, the depth, the bottom and the parts of the pot.',
  fault: 'The forces could not be worked out. Nothing was lost. Change a value to try again.',
  outlook: 'Reckoned',
  changes: 'What would help',
  take: 'Try it',
  taken: (what: string) => `Tried: ${what}`,
  forces: 'What pushes and what holds',
  current: (speed: string, depth: string) => `In ${speed} at the surface, ${depth} of water`,
  push: 'Pushes along the bottom',
  grip: 'The bottom can hold',
  shares: 'Where the push comes from',
  fromRope: 'Pull of the rope',
  side: 'The rope from the side',
  ropeFacts: (tension: string, reserve: string, offset: string) =>
    `Pulls with ${tension} at most, leaves the float ${reserve} to spare, and streams ${offset} down-current.`,
  ropeUnder: (dip: string) => `The float is pulled under by ${dip}.`,
  surface: 'Surface',
  bottom: 'Bottom',
  factors: 'How well it holds over the current',
  factorLabel: 'Grip over push',
  currentLabel: 'Surface current',
  moves: 'Below 1 it moves',
  here: 'Strongest here',
  rings: 'What a heavier base ring does',
  ringMass: 'Mass of the base ring',
  startsAt: 'Starts to move at',
} as const

export const outlookWords: Record<Outlook, string> = {
  cautious: 'Cautiously',
  middle: 'As likely',
  hopeful: 'Hopefully',
}

export const sharePartWords: Partial<Record<PartName, string>> = {
  netting: 'Netting',
  entrances: 'Funnels',
  bait: 'Bait',
  catch: 'Catch',
  ballast: 'Weights',
  chafe: 'Chafe gear',
  'base-ring': 'Base ring',
  'middle-ring': 'Middle ring',
  'top-ring': 'Top ring',
  strut: 'Struts',
  'cross-bar': 'Cross-bars',
  frame: 'Frame',
}
