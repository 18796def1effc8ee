import type { PartName } from '@shared/schema/check'
import { Group, Mesh, type BufferGeometry, type Material } from 'three'
import type { Emphasis, PartMaterials } from './part-materials'
import type { PartItem } from './part-items'
import { castLayers } from './soft-shadow'
import { catchTwine } from './twine-picking'

interface Drawn {
  item: PartItem
  readonly mesh: Mesh<BufferGeometry, Material>
}

/** The pot's drawn parts. A change of the design replaces only the geometry that it touched. */
export interface PotParts {
  readonly group: Group
  /** Returns whether anything took another shape. */
  update(items: readonly PartItem[]): boolean
  emphasise(look: (part: PartName) => Emphasis): void
  partOf(mesh: unknown): PartName | undefined
  dispose(): void
}

// Drawn near the pot but in truth far above it, so they leave no shadow here.
const afloat: ReadonlySet<PartName> = new Set(['rope', 'float'])

export function createPotParts(materials: PartMaterials): PotParts {
  const group = new Group()
  const drawn = new Map<string, Drawn>()
  const parts = new Map<unknown, PartName>()

  function drop(slot: string, { item, mesh }: Drawn) {
    group.remove(mesh)
    mesh.geometry.dispose()
    materials.release(mesh.material, item)
    parts.delete(mesh)
    drawn.delete(slot)
  }

  function place(item: PartItem): boolean {
    const known = drawn.get(item.slot)
    if (!known) {
      const mesh = new Mesh(item.build(), materials.make(item))
      if (!afloat.has(item.part)) mesh.layers.enable(item.twine ? castLayers.twine : castLayers.solid)
      if (item.twine) catchTwine(mesh)
      group.add(mesh)
      drawn.set(item.slot, { item, mesh })
      parts.set(mesh, item.part)
      return true
    }
    const reshaped = known.item.key !== item.key
    if (reshaped) {
      known.mesh.geometry.dispose()
      known.mesh.geometry = item.build()
    }
    materials.refresh(known.mesh.material, item)
    known.item = item
    return reshaped
  }

  return {
    group,
    update(items) {
      const wanted = new Set(items.map((item) => item.slot))
      const gone = [...drawn].filter(([slot]) => !wanted.has(slot))
      for (const [slot, entry] of gone) drop(slot, entry)
      const reshaped = items.filter(place)
      return gone.length + reshaped.length > 0
    },
    emphasise(look) {
      for (const { item, mesh } of drawn.values()) materials.emphasise(mesh.material, item, look(item.part))
    },
    partOf: (mesh) => parts.get(mesh),
    dispose() {
      for (const [slot, entry] of drawn) drop(slot, entry)
    },
  }
}
