import {
  Color,
  MeshStandardMaterial,
  ShaderMaterial,
  type Material,
  Texture,
  type Vector2,
  type Vector3,
} from 'three'
import { floatTexture } from './float-texture'
import { grainTexture, type Grain } from './grain-textures'
import { looks } from './material-looks'
import type { PartItem } from './part-items'
import { createTwineMaterial, dressTwine, type TwineLook } from './twine-material'

/** Makes the materials of parts, and owns what they share. */
export interface PartMaterials {
  make(item: PartItem): Material
  emphasise(material: Material, item: PartItem, emphasis: Emphasis): void
  /** Brings sizes that changed with the design to a material already in use. */
  refresh(material: Material, item: PartItem): void
  /** Takes a material back when its part is gone. */
  release(material: Material, item: PartItem): void
  dispose(): void
}

/** How a part stands out: a colour of its own in place of its material's, and a glow on top. */
export interface Emphasis {
  readonly tint?: string | undefined
  readonly glow?: string | undefined
  readonly glowStrength?: number
}

export function createPartMaterials(screen: Vector2, key: Vector3): PartMaterials {
  const grains = new Map<Grain, Texture>()
  /** Twine whose part is gone: one kept keeps the program on the card, which is slow to build. */
  const spare: ShaderMaterial[] = []

  // Every solid has a grain, plain ones a blank, so that all of them share one program on the card.
  function grain(name: Grain): Texture {
    const known = grains.get(name) ?? grainTexture(name)
    grains.set(name, known)
    return known
  }

  function make(item: PartItem): Material {
    if (item.coat) {
      const map = floatTexture(item.coat.colours, item.coat.pattern)
      const coat = new MeshStandardMaterial({ map, roughness: 0.38, metalness: 0 })
      coat.userData = { paint: map }
      return coat
    }
    if (item.twine) {
      const look = twineLook(item, item.twine)
      const kept = spare.pop()
      if (!kept) return createTwineMaterial(look, screen, key)
      dressTwine(kept, look)
      return kept
    }
    const spec = specOf(item)
    return new MeshStandardMaterial({
      color: spec.colour,
      metalness: spec.metalness,
      roughness: spec.roughness,
      map: grain(item.grain ?? spec.grain ?? 'plain'),
    })
  }

  return {
    make,
    emphasise(material, item, { tint, glow, glowStrength = 0.35 }) {
      const spec = item.coat ? undefined : specOf(item)
      const own = spec?.colour ?? '#ffffff'
      const light = new Color(glow ?? '#000000').multiplyScalar(glow ? glowStrength : 0)
      if (material instanceof ShaderMaterial) {
        const { colour, glow: glowing } = material.uniforms
        if (colour?.value instanceof Color) colour.value.set(tint ?? own)
        if (glowing?.value instanceof Color) glowing.value.copy(light)
      } else if (material instanceof MeshStandardMaterial) {
        // A tint stands for a value, so neither paint nor metal may colour it.
        if (item.coat) material.map = tint ? grain('plain') : paintOf(material)
        material.color.set(tint ?? own)
        material.metalness = tint ? 0 : (spec?.metalness ?? 0)
        material.emissive.copy(light)
      }
    },
    refresh(material, item) {
      if (material instanceof ShaderMaterial && item.twine) dressTwine(material, twineLook(item, item.twine))
    },
    release(material, { coat }) {
      if (material instanceof ShaderMaterial) spare.push(material)
      else {
        if (coat) paintOf(material)?.dispose()
        material.dispose()
      }
    },
    dispose() {
      for (const material of spare) material.dispose()
      spare.length = 0
      for (const texture of grains.values()) texture.dispose()
      grains.clear()
    },
  }
}

const specOf = ({ look }: PartItem) => looks[look === 'float' ? 'plastic' : look]

function twineLook(item: PartItem, twine: NonNullable<PartItem['twine']>): TwineLook {
  const { colour, shine = 0.1 } = specOf(item)
  return { colour, shine, ...twine }
}

function paintOf(material: Material): Texture | null {
  const { paint } = material.userData
  return paint instanceof Texture ? paint : null
}
