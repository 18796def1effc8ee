import type { QuantityWords } from './quantity-words'

export const potWords = {
  'body.shape': { label: "The pot's shape", less: 'Choose another shape.', more: 'Choose another shape.' },
  'body.length': { label: "The pot's length", less: 'Make the pot shorter.', more: 'Make the pot longer.' },
  'body.width': { label: "The pot's width", less: 'Make the pot narrower.', more: 'Make the pot wider.' },
  'body.height': { label: "The pot's height", less: 'Make the pot lower.', more: 'Make the pot higher.' },
  'body.diameter': {
    label: "The pot's widest diameter",
    less: 'Use smaller rings.',
    more: 'Use larger rings.',
  },
  'body.longest-side': { label: "The pot's longest side", less: 'Make the pot smaller.' },
  'body.volume': { label: "The pot's volume", less: 'Make the pot smaller.' },
  'body.base-area': { label: 'The area inside the frame', less: 'Use a smaller frame.' },
  'body.folds-flat': { label: 'Sides that fold flat', more: 'Use one with sides that fold flat.' },
  'body.chambers': { label: 'The number of chambers' },
  'frame.thinnest-bar': { label: "The frame's thinnest bar", more: 'Use thicker bar.' },
  'frame.rings': { label: 'The number of rings', less: 'Use fewer rings.' },
  'frame.uprights': {
    label: 'The rigid bars between the rings',
    less: 'Use a net without a rigid frame between its rings.',
  },
  'mesh.bar': { label: 'One bar of the mesh', less: 'Use a smaller mesh.', more: 'Use a larger mesh.' },
  'mesh.diagonal': {
    label: 'The mesh on the diagonal',
    less: 'Use a smaller mesh.',
    more: 'Use a larger mesh.',
  },
  'mesh.stretched': { label: 'The stretched mesh', less: 'Use a smaller mesh.', more: 'Use a larger mesh.' },
  'mesh.narrowed-bar': {
    label: 'One bar of the mesh beside the chafe gear',
    more: 'Keep the chafe gear off the mesh.',
  },
  'mesh.narrowed-diagonal': {
    label: 'The diagonal of the mesh beside the chafe gear',
    more: 'Keep the chafe gear off the mesh, or use a larger mesh.',
  },
  'mesh.narrowed-stretched': {
    label: 'The stretched mesh beside the chafe gear',
    more: 'Keep the chafe gear off the mesh, or use a larger mesh.',
  },
  'mesh.material': { label: 'The netting', less: 'Use other netting.', more: 'Use other netting.' },
  'mesh.entangles': { label: 'Netting that can tangle a crab', less: 'Use taut netting that cannot tangle.' },
  'chafe.kind': { label: 'The chafe gear', less: 'Take it off.', more: 'Fit chafe gear.' },
} satisfies Record<string, QuantityWords>
