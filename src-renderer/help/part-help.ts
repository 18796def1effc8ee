import type { PartId } from '@renderer/places/bench/part-ids'

/** What a crabber knows by heart about each part. Common practice, no source. */
export const partHelp: Readonly<Record<PartId, readonly string[]>> = {
  body: [
    'A pot sits base down. Upside down, crabs feed from the top and never go in.',
    'A wider base tips later; a lower one catches less current.',
  ],
  frame: [
    'The base ring does most of the holding. More run needs a heavier ring; a light pot tumbles or walks.',
    'Thin bars rust through first where they are welded.',
  ],
  ballast: [
    'Weight low down holds best. Spread it round the base ring, so that the pot lands level.',
    'Every kilogram has to come up again by hand.',
  ],
  netting: [
    'Meshes are measured in different ways: knot to knot, across the diagonal, stretched. Rules say which.',
    'Finer twine lets more water through; thicker twine lasts longer.',
  ],
  entrances: [
    'Crabs come up-current, following the scent. Two entrances facing each other suit a tide that turns.',
    'A sill a hand’s width above the base keeps those inside in.',
  ],
  doors: [
    'A door on top lets you bait and empty without turning the pot over. Keep its hook away from the ring.',
  ],
  chafe: [
    'The base ring drags over the bottom and cuts its own netting. A wrap of rope or hose takes the wear.',
    'Some places count a wrap as part of the mesh, so look before you wrap the netting itself.',
  ],
  bait: [
    'Bait hangs in the middle, out of reach from outside.',
    'A clip is stripped quickly, a plastic mesh bag lasts a short soak, a wire basket a long one.',
  ],
  'escape-gaps': [
    'Small crabs leave by the gap before they are crowded or eaten. Put it where the rules say, high or low.',
    'A gap measured after wear or paint may be too small.',
  ],
  release: [
    'Thin cotton or jute rots in a few weeks and opens the pot, so that a lost one stops fishing.',
    'Renew it on a day of the calendar, not when it breaks.',
  ],
  bridle: [
    'The pot hangs by this point on the haul. Tie it between two entrances, never opposite one: an entrance below it lets crabs out.',
  ],
  rope: [
    'The rope must be well over the depth at high water, or the run pulls the float under.',
    'Rope that floats slack lies where propellers and animals find it. A weight a little below the float keeps it down.',
  ],
  float: [
    'Set floats in the order of their numbers: a gap on the way back is a pot left behind.',
    'Come up to a float from down-current.',
  ],
  marks: [
    'Every region asks for its own marks. The label sheet prints exactly those.',
    'Only the one whose name is on the float may pull it in most places.',
  ],
  catch: ['A full pot pulls harder and holds better. Check the lift with the best haul you hope for.'],
  stow: ['Give the space for all pots together, with the boat’s or the car’s load left over for people.'],
}
