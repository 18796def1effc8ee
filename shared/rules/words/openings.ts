import type { QuantityWords } from './quantity-words'

export const openingsWords = {
  'entrances.count': {
    label: 'The number of entrances',
    less: 'Close an entrance.',
    more: 'Add an entrance.',
  },
  'entrances.over-haul-point': {
    label: 'A haul point over an entrance',
    less: 'Tie the rope between two entrances.',
  },
  'entrance.width': {
    label: "The entrance's width",
    less: 'Make the entrance narrower.',
    more: 'Make the entrance wider.',
  },
  'entrance.height': {
    label: "The entrance's height",
    less: 'Make the entrance lower.',
    more: 'Make the entrance higher.',
  },
  'entrance.shorter-side': {
    label: "The entrance's shorter side",
    less: 'Make the entrance smaller.',
    more: 'Make the entrance larger.',
  },
  'entrance.longer-side': {
    label: "The entrance's longer side",
    less: 'Make the entrance smaller.',
    more: 'Make the entrance larger.',
  },
  'entrance.perimeter': { label: 'The distance round the entrance', less: 'Make the entrance smaller.' },
  'entrance.aspect': {
    label: "The entrance's width over its height",
    less: 'Make the entrance narrower.',
    more: 'Make the entrance flatter.',
  },
  'entrance.depth': {
    label: "The funnel's depth into the pot",
    less: 'Shorten the funnel.',
    more: 'Lengthen the funnel.',
  },
  'entrance.on-top': {
    label: 'An entrance on top',
    less: 'Move the entrance to a side.',
    more: 'Move the entrance to the top.',
  },
  'entrance.excluder-fitted': {
    label: 'A turtle frame in the entrance',
    more: 'Fit a turtle frame in every entrance.',
  },
  'entrance.throat-height': {
    label: 'The shorter side of the way in',
    less: 'Fit a smaller turtle frame.',
  },
  'entrance.throat-width': {
    label: 'The longer side of the way in',
    less: 'Fit a smaller turtle frame.',
  },
  'bait.blocks-entrance': {
    label: 'A bait holder in the way of the entrance',
    less: 'Move the bait holder out of the entrance.',
  },
  'bait.holder': {
    label: 'The bait holder',
    less: 'Use another bait holder.',
    more: 'Use another bait holder.',
  },
  'gaps.count': {
    label: 'The number of escape gaps',
    less: 'Take an escape gap out.',
    more: 'Fit more escape gaps.',
  },
  'gaps.per-chamber': { label: 'Escape gaps in each chamber', more: 'Fit escape gaps in every chamber.' },
  'gaps.opposite': { label: 'Escape gaps on opposite sides', more: 'Put the escape gaps on opposite sides.' },
  'gap.diameter': {
    label: "The escape gap's inside diameter",
    less: 'Fit smaller escape gaps.',
    more: 'Fit larger escape gaps.',
  },
  'gap.width': {
    label: "The escape gap's width",
    less: 'Fit narrower escape gaps.',
    more: 'Fit wider escape gaps.',
  },
  'gap.height': {
    label: "The escape gap's height",
    less: 'Fit lower escape gaps.',
    more: 'Fit higher escape gaps.',
  },
  'gap.bottom-edge': {
    label: "The escape gap's bottom edge above the base",
    less: 'Put the escape gap lower.',
    more: 'Put the escape gap higher.',
  },
  'gap.bottom-below-top': {
    label: "The escape gap's bottom edge below the top",
    less: 'Put the escape gap higher.',
    more: 'Put the escape gap lower.',
  },
  'gap.in-upper-half': {
    label: 'An escape gap in the upper half',
    less: 'Put the escape gap lower.',
    more: 'Put the escape gap in the upper half.',
  },
  'gap.on-top': {
    label: 'An escape gap on top',
    less: 'Move the escape gap to a side.',
    more: 'Move the escape gap to the top.',
  },
  'gap.corner': {
    label: "The escape gap's distance from the nearest corner",
    less: 'Move the escape gap nearer the corner.',
  },
  'gap.shape': {
    label: "The escape gap's shape",
    less: 'Fit escape gaps of another shape.',
    more: 'Fit escape gaps of another shape.',
  },
} satisfies Record<string, QuantityWords>
