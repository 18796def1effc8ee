import type { Component } from 'svelte'
import type { PartId } from '../part-ids'
import BaitPart from './BaitPart.svelte'
import BallastPart from './BallastPart.svelte'
import BodyPart from './BodyPart.svelte'
import BridlePart from './BridlePart.svelte'
import CatchPart from './CatchPart.svelte'
import ChafePart from './ChafePart.svelte'
import DoorsPart from './DoorsPart.svelte'
import EntrancesPart from './EntrancesPart.svelte'
import EscapeGapsPart from './EscapeGapsPart.svelte'
import FloatPart from './FloatPart.svelte'
import FramePart from './FramePart.svelte'
import MarksPart from './MarksPart.svelte'
import NettingPart from './NettingPart.svelte'
import ReleasePart from './ReleasePart.svelte'
import RopePart from './RopePart.svelte'
import StowPart from './StowPart.svelte'

/** The controls of each compartment. */
export const partEditors: Record<PartId, Component> = {
  body: BodyPart,
  frame: FramePart,
  ballast: BallastPart,
  netting: NettingPart,
  entrances: EntrancesPart,
  doors: DoorsPart,
  chafe: ChafePart,
  bait: BaitPart,
  'escape-gaps': EscapeGapsPart,
  release: ReleasePart,
  bridle: BridlePart,
  rope: RopePart,
  float: FloatPart,
  marks: MarksPart,
  catch: CatchPart,
  stow: StowPart,
}
