import type { QuantityWords } from './quantity-words'

export const tackleWords = {
  'rope.diameter': { label: "The rope's diameter", less: 'Use a thinner rope.', more: 'Use a thicker rope.' },
  'rope.length': { label: "The rope's length", less: 'Use a shorter rope.', more: 'Use a longer rope.' },
  'rope.sinks': { label: 'Rope that sinks', more: 'Use rope that sinks.' },
  'rope.kept-under': {
    label: 'Rope kept under the surface',
    more: 'Use rope that sinks, or hang a weight on it.',
  },
  'rope.floating-length': {
    label: 'The rope that can lie on the surface',
    less: 'Use rope that sinks, or hang a weight nearer the float.',
  },
  'rope-weight.mass': {
    label: "The rope weight's mass",
    less: 'Hang a lighter weight.',
    more: 'Hang a heavier weight.',
  },
  'rope-weight.below-float': {
    label: "The rope weight's depth below the float",
    less: 'Hang the weight higher.',
    more: 'Hang the weight deeper.',
  },
  'float.shape': { label: "The float's shape", less: 'Use another float.', more: 'Use another float.' },
  'float.smallest-side': {
    label: "The float's smallest measure",
    less: 'Use a smaller float.',
    more: 'Use a bigger float.',
  },
  'float.diameter': {
    label: "The float's diameter",
    less: 'Use a smaller float.',
    more: 'Use a bigger float.',
  },
  'float.length': { label: "The float's length", less: 'Use a shorter float.', more: 'Use a longer float.' },
  'float.volume': { label: "The float's volume", less: 'Use a smaller float.', more: 'Use a bigger float.' },
  'float.freeboard': {
    label: "The loaded float's height above still water",
    more: 'Use a bigger float or hang less weight on it.',
  },
  'float.colours': {
    label: "The float's colours",
    less: 'Paint it in the colours asked for.',
    more: 'Paint it in the colours asked for.',
  },
  'float.pattern': {
    label: "The float's pattern",
    less: 'Paint it in the pattern asked for.',
    more: 'Paint it in the pattern asked for.',
  },
  'float.stripe': {
    label: "The width of the float's stripe",
    less: 'Make the stripe narrower.',
    more: 'Make the stripe wider.',
  },
  'float.material': { label: "The float's material", less: 'Use another float.', more: 'Use another float.' },
  'float.purpose-made': { label: 'A float made for the purpose', more: 'Use a float made as a marker buoy.' },
  'float.reflective': { label: 'A reflective float', more: 'Put reflective tape on the float.' },
  'marker-float.fitted': {
    label: 'A second, marker float',
    less: 'Take the marker float off.',
    more: 'Tie on a second, marker float.',
  },
  'marker-float.diameter': { label: "The marker float's diameter", more: 'Use a bigger marker float.' },
  'marker-float.length': { label: "The marker float's length", more: 'Use a longer marker float.' },
  'marker-float.colours': {
    label: "The marker float's colours",
    less: 'Paint it in the colours asked for.',
    more: 'Paint it in the colours asked for.',
  },
  'marks.float': { label: 'The marking on the float', more: 'Mark the float.' },
  'marks.tag': { label: 'The marking on the tag', more: 'Fit a marked tag to the pot.' },
  'marks.rope-tag': { label: 'The marking on the rope tag', more: 'Fit a marked tag to the rope.' },
  'marks.anywhere': { label: 'The marking on the gear', more: 'Mark the gear.' },
  'marks.float-text': { label: 'The lettering on the float', more: 'Add the lettering to the float.' },
  'marks.tag-text': { label: 'The lettering on the tag', more: 'Add the lettering to the tag.' },
  'marks.letter-height': {
    label: 'The height of the letters',
    less: 'Use smaller letters.',
    more: 'Use bigger letters.',
  },
  'marks.contrasting': {
    label: 'Letters that stand out from their ground',
    more: 'Use a contrasting colour.',
  },
} satisfies Record<string, QuantityWords>
