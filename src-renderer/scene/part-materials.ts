import { Color, MeshPhongMaterial, MixOperation, ShaderMaterial, type Material, Texture } from 'three'
import { floatTexture } from './float-texture'
import { grainTexture, type Grain } from './grain-textures'
import { looks, type LookSpec } from './material-looks'
import type { PartItem } from './part-items'
import type { Stage } from './stage'
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

export function createPartMaterials({
  screen,
  key,
  studio,
}: Pick<Stage, 'screen' | 'key' | 'studio'>): PartMaterials {
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
    if (item.twine) {
      const look = twineLook(item, item.twine)
      const kept = spare.pop()
      if (!kept) return createTwineMaterial(look, screen, key)
      dressTwine(kept, look)
      return kept
    }
    const surface = surfaceOf(item)
    const { metalness, roughness, grain: own } = surface
    const gloss = 1 - roughness
    const map = item.coat
      ? floatTexture(item.coat.colours, item.coat.pattern)
      : grain(item.grain ?? own ?? 'plain')
    const material = new MeshPhongMaterial({
      map,
      shininess: 2 / roughness ** 3,
      specular: new Color().setScalar(0.02 + 0.25 * gloss ** 2 + 0.4 * metalness * gloss),
      envMap: studio,
      combine: MixOperation,
      userData: { paint: item.coat && map },
    })
    colourIn(material, surface, undefined)
    return material
  }

  /** A tint stands for a value, so neither metal nor what it mirrors may colour it. */
  function colourIn(material: MeshPhongMaterial, surface: LookSpec, tint: string | undefined) {
    const { colour, metalness, roughness } = surface
    const gloss = 1 - roughness
    // What a metal mirrors, its own colour does not scatter.
    material.color.set(tint ?? colour).multiplyScalar(tint ? 1 : 1 - 0.6 * metalness)
    material.reflectivity = tint ? 0 : 0.1 * gloss ** 2 + 0.5 * metalness * gloss
  }

  return {
    make,
    emphasise(material, item, { tint, glow, glowStrength = 0.35 }) {
      const light = new Color(glow ?? '#000000').multiplyScalar(glow ? glowStrength : 0)
      if (material instanceof ShaderMaterial) {
        const { colour, glow: glowing } = material.uniforms
        if (colour?.value instanceof Color) colour.value.set(tint ?? surfaceOf(item).colour)
        if (glowing?.value instanceof Color) glowing.value.copy(light)
      } else if (material instanceof MeshPhongMaterial) {
        if (item.coat) material.map = tint ? grain('plain') : paintOf(material)
        colourIn(material, surfaceOf(item), tint)
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

const paintedCoat: LookSpec = { colour: '#ffffff', metalness: 0, roughness: 0.38 }

const surfaceOf = ({ look, coat }: PartItem): LookSpec =>
  coat ? paintedCoat : looks[look === 'float' ? 'plastic' : look]

function twineLook(item: PartItem, twine: NonNullable<PartItem['twine']>): TwineLook {
  const { colour, shine = 0.1 } = surfaceOf(item)
  return { colour, shine, ...twine }
}

function paintOf(material: Material): Texture | null {
  const { paint } = material.userData
  return paint instanceof Texture ? paint : null
}
