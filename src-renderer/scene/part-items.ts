import type { Block, Lathe, Look, MeshLines, PotGeometry, Tube } from '@shared/design/geometry/pot-geometry'
import type { PartName } from '@shared/schema/check'
import type { Netting, Pot } from '@shared/schema/pot'
import type { BufferGeometry } from 'three'
import type { Grain } from './grain-textures'
import { hashOf } from './hash'
import { blockGeometry, latheGeometry } from './solid-geometry'
import { tubeGeometry } from './tube-geometry'
import { panelFacing } from './panel-facing'
import { barsAlong, twineGeometry } from './twine-lines'

/** One thing to draw. Its slot stays while the design changes; its key tells whether its geometry did. */
export interface PartItem {
  readonly slot: string
  readonly part: PartName
  readonly look: Look | 'float'
  readonly key: number
  readonly build: () => BufferGeometry
  readonly twine?: TwineItem
  /** Surface over the look's own. */
  readonly grain?: Grain
  readonly coat?: { readonly colours: readonly string[]; readonly pattern: Lathe['pattern'] }
}

interface TwineItem {
  readonly radiusM: number
  readonly lines: number
  readonly pitchM: number
  /** Least width on screen [px]. */
  readonly leastPx: number
  readonly lightShare: number
}

/** Flattens a pot's geometry to what is drawn, one item a tube, panel or body. */
export function partItems(
  geometry: PotGeometry,
  { netting, bait }: Pick<Pot, 'netting' | 'bait'>,
): PartItem[] {
  const bagged = bait?.holder === 'mesh-bag'
  const seen = new Map<string, number>()
  const slot = (kind: string, part: PartName, index: number | undefined, look: string, more = '') => {
    const base = `${kind}/${part}/${String(index ?? '')}/${look}/${more}`
    const ordinal = seen.get(base) ?? 0
    seen.set(base, ordinal + 1)
    return `${base}/${String(ordinal)}`
  }
  return [
    ...geometry.tubes.map((tube) => tubeItem(tube, slot('tube', tube.part, tube.index, tube.look))),
    ...geometry.meshes
      .filter((mesh) => mesh.segments.length > 0)
      .map((mesh) => meshItem(mesh, slot('mesh', mesh.part, mesh.index, mesh.look, mesh.panel), netting)),
    ...geometry.lathes.map((lathe) => {
      const item = latheItem(lathe, slot('lathe', lathe.part, lathe.index, lathe.look))
      return lathe.look === 'bait' && bagged
        ? { ...item, slot: `${item.slot}/bagged`, grain: 'bag' as const }
        : item
    }),
    ...geometry.blocks.map((block) => blockItem(block, slot('block', block.part, block.index, block.look))),
  ]
}

function tubeItem(tube: Tube, slot: string): PartItem {
  if (isWrap(tube)) return wrapItem(tube, slot)
  const sides = tube.radiusM > 0.003 ? 12 : 7
  return {
    slot,
    part: tube.part,
    look: tube.look,
    key: hashOf(tube.points, [tube.radiusM, tube.closed ? 1 : 0]),
    build: () => tubeGeometry(tube.points, tube.radiusM, tube.closed, sides),
  }
}

const isWrap = ({ part, look }: Tube) => part === 'chafe' && look !== 'hose'

/** A strip wound round a ring hundreds of times, its turns far too thin to be worth a bar's faces. */
function wrapItem(tube: Tube, slot: string): PartItem {
  return {
    slot: `wrap/${slot}`,
    part: tube.part,
    look: tube.look,
    key: hashOf(tube.points, [tube.radiusM]),
    build: () => twineGeometry(barsAlong(tube.points, tube.closed)),
    twine: { radiusM: tube.radiusM, lines: 1, pitchM: 1, leastPx: 1.15, lightShare: 0.5 },
  }
}

function meshItem(mesh: MeshLines, slot: string, netting: Netting | undefined): PartItem {
  const thinned = mesh.thinning > 1
  return {
    slot: `${slot}${thinned ? '/bundled' : ''}`,
    part: mesh.part,
    look: mesh.look,
    key: hashOf(mesh.segments, [mesh.thinning]),
    build: () => twineGeometry(mesh.segments, thinned ? panelFacing(mesh.panel, mesh.segments) : undefined),
    twine: {
      radiusM: mesh.diameterM / 2,
      lines: mesh.thinning,
      pitchM: netting ? linePitch(netting) : mesh.diameterM * 10,
      leastPx: 1.15,
      lightShare: 1,
    },
  }
}

/** Distance between neighbouring parallel twines [m]: square in wire, across the diamond in twine. */
function linePitch(netting: Netting): number {
  const bar = netting.barLengthMm / 1000
  if (netting.material.startsWith('wire')) return bar
  const hung = netting.hangingRatio ?? Math.SQRT1_2
  return 2 * bar * hung * Math.sqrt(1 - hung ** 2)
}

function latheItem(lathe: Lathe, slot: string): PartItem {
  const coat = lathe.look === 'float' ? { colours: lathe.colours, pattern: lathe.pattern } : undefined
  return {
    slot: coat ? `${slot}/${coat.pattern}/${coat.colours.join('-')}` : slot,
    part: lathe.part,
    look: lathe.look,
    key: hashOf(lathe.profile, [...lathe.at, ...lathe.axis]),
    build: () => latheGeometry(lathe),
    ...(coat && { coat }),
  }
}

function blockItem(block: Block, slot: string): PartItem {
  return {
    slot,
    part: block.part,
    look: block.look,
    key: hashOf([...block.centre, ...block.sizeM, block.turnRad]),
    build: () => blockGeometry(block),
  }
}
