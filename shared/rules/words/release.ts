import type { QuantityWords } from './quantity-words'

export const releaseWords = {
  'release.kind': {
    label: 'The release',
    less: 'Fit another kind of release.',
    more: 'Fit a release that lets crabs out of a lost pot.',
  },
  'release.material': {
    label: "The release cord's material",
    less: 'Use untreated natural cord.',
    more: 'Use untreated natural cord.',
  },
  'release.cord-diameter': {
    label: "The release cord's thickness",
    less: 'Use a thinner cord.',
    more: 'Use a thicker cord.',
  },
  'release.threads': {
    label: "The release cord's thread count",
    less: 'Use a cord with fewer threads.',
    more: 'Use a cord with more threads.',
  },
  'release.loops': { label: 'The loops of cord that hold the release', less: 'Use fewer loops.' },
  'release.opening-width': {
    label: "The release opening's width",
    less: 'Make the opening narrower.',
    more: 'Make the opening wider.',
  },
  'release.opening-height': {
    label: "The release opening's height",
    less: 'Make the opening lower.',
    more: 'Make the opening higher.',
  },
  'release.opening-shorter-side': {
    label: "The release opening's shorter side",
    less: 'Make the opening smaller.',
    more: 'Make the opening larger.',
  },
  'release.opening-longer-side': {
    label: "The release opening's longer side",
    less: 'Make the opening smaller.',
    more: 'Make the opening larger.',
  },
  'release.bottom-edge': {
    label: "The release opening's bottom edge above the base",
    less: 'Put the opening lower.',
    more: 'Put the opening higher.',
  },
  'release.in-upper-half': {
    label: 'A release opening in the upper half',
    more: 'Put the opening in the upper half.',
  },
} satisfies Record<string, QuantityWords>
