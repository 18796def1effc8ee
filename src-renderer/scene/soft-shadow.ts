import {
  Color,
  LinearFilter,
  Mesh,
  MeshBasicMaterial,
  OrthographicCamera,
  PlaneGeometry,
  Scene,
  ShaderMaterial,
  Vector2,
  Vector3,
  WebGLRenderTarget,
  type Object3D,
  type WebGLRenderer,
} from 'three'

const size = 256

/** Distance between the taps of the blur [px]. */
const spread = 0.9

/** Layers by which casters are drawn: twine has a shape only in its own material, solids are cheaper without theirs. */
export const castLayers = { solid: 1, twine: 2 } as const

export function castsShadow({ layers }: Object3D): boolean {
  return layers.isEnabled(castLayers.solid) || layers.isEnabled(castLayers.twine)
}

const screenVertex = /* glsl */ `
  varying vec2 vUv;
  void main() { vUv = uv; gl_Position = vec4(position.xy, 0.0, 1.0); }
`

// Nine taps of a Gaussian, once across and once up.
const blurFragment = /* glsl */ `
  uniform sampler2D map;
  uniform vec2 stride;
  varying vec2 vUv;
  void main() {
    float sum = 0.0;
    for (int k = -6; k <= 6; k++) {
      float weight = exp(-float(k * k) / 16.0) / 7.03;
      sum += texture2D(map, vUv + stride * float(k)).a * weight;
    }
    gl_FragColor = vec4(0.0, 0.0, 0.0, sum);
  }
`

/**
 * A soft shadow on the bottom. What casts it is drawn once from the key light; how much light each place loses is the
 * drawing's own coverage, so fine netting shades lightly and a bar shades fully. Made again only when asked.
 */
export interface SoftShadow {
  readonly plane: Object3D
  cast(caster: Object3D, centre: Vector3, radiusM: number): void
  strength(share: number): void
  dispose(): void
}

export function createSoftShadow(renderer: WebGLRenderer, key: Vector3, screen: Vector2): SoftShadow {
  const options = { minFilter: LinearFilter, magFilter: LinearFilter }
  const sharp = new WebGLRenderTarget(size, size, { ...options, samples: 4 })
  const soft = new WebGLRenderTarget(size, size, options)
  const eye = new OrthographicCamera(-1, 1, 1, -1, 0.01, 50)
  const square = new PlaneGeometry(2, 2)
  const blur = new ShaderMaterial({
    vertexShader: screenVertex,
    fragmentShader: blurFragment,
    uniforms: { map: { value: null }, stride: { value: new Vector2() } },
    depthTest: false,
    depthWrite: false,
  })
  const blurScene = new Scene()
  const sheet = new Mesh(square, blur)
  sheet.frustumCulled = false
  blurScene.add(sheet)

  const floor = new PlaneGeometry(1, 1, 1, 1)
  const material = new MeshBasicMaterial({
    map: sharp.texture,
    color: '#000000',
    transparent: true,
    depthWrite: false,
    toneMapped: false,
  })
  const plane = new Mesh(floor, material)
  plane.renderOrder = -1
  const stageScene = new Scene()
  const flat = new MeshBasicMaterial({ color: '#000000' })
  const corner = new Vector3()

  function pass(from: WebGLRenderTarget, to: WebGLRenderTarget, x: number, y: number) {
    const { map, stride } = blur.uniforms
    if (map) map.value = from.texture
    if (stride?.value instanceof Vector2) stride.value.set(x, y)
    renderer.setRenderTarget(to)
    renderer.clear()
    renderer.render(blurScene, eye)
  }

  /** Lays the floor's corners where the light's picture meets the bottom. */
  function layFloor() {
    const position = floor.getAttribute('position')
    const uv = floor.getAttribute('uv')
    for (let k = 0; k < 4; k++) {
      const u = k % 2
      const v = k < 2 ? 1 : 0
      corner.set(u * 2 - 1, v * 2 - 1, -1).unproject(eye)
      corner.addScaledVector(key, -corner.y / key.y)
      position.setXYZ(k, corner.x, 0.0008, corner.z)
      uv.setXY(k, u, v)
    }
    position.needsUpdate = true
    uv.needsUpdate = true
    floor.computeBoundingSphere()
  }

  return {
    plane,
    cast(caster, centre, radiusM) {
      const reach = radiusM * 1.5
      eye.left = eye.bottom = -reach
      eye.right = eye.top = reach
      eye.far = reach * 6
      eye.position.copy(centre).addScaledVector(key, reach * 3)
      eye.lookAt(centre)
      eye.updateProjectionMatrix()
      eye.updateMatrixWorld()
      layFloor()

      const home = caster.parent
      const clear = renderer.getClearColor(new Color())
      const clearAlpha = renderer.getClearAlpha()
      const { x, y } = screen
      stageScene.add(caster)
      renderer.setClearColor('#000000', 0)
      screen.set(size, size)
      renderer.setRenderTarget(sharp)
      renderer.clear()
      renderer.autoClear = false
      stageScene.overrideMaterial = flat
      eye.layers.set(castLayers.solid)
      renderer.render(stageScene, eye)
      stageScene.overrideMaterial = null
      eye.layers.set(castLayers.twine)
      renderer.render(stageScene, eye)
      renderer.autoClear = true
      eye.layers.set(0)
      pass(sharp, soft, spread / size, 0)
      pass(soft, sharp, 0, spread / size)
      renderer.setRenderTarget(null)
      screen.set(x, y)
      renderer.setClearColor(clear, clearAlpha)
      home?.add(caster)
    },
    strength(share) {
      material.opacity = share
    },
    dispose() {
      sharp.dispose()
      soft.dispose()
      square.dispose()
      floor.dispose()
      blur.dispose()
      material.dispose()
      flat.dispose()
    },
  }
}
