import type { Vector2, Vector3 } from 'three'
import { Color, DoubleSide, ShaderMaterial } from 'three'

/*
 * Thin round things (twine, wire, a far rope) drawn as one flat strip each, turned to the eye and shaded as a round
 * bar. A strip thinner than a pixel is drawn a pixel wide and correspondingly faint, so netting fades to an even veil
 * with distance instead of breaking up into moiré.
 */

export interface TwineLook {
  readonly colour: string
  readonly radiusM: number
  readonly shine: number
  /** Real lines that one drawn strip stands for, and how far apart they lie [m]. */
  readonly lines: number
  readonly pitchM: number
  /** Least width on screen [px]; a lone rope must never vanish. */
  readonly leastPx: number
  /** Share of the light that reaches it: turns wound close shade each other. */
  readonly lightShare: number
}

const vertexShader = /* glsl */ `
  attribute vec3 start;
  attribute vec3 end;
  attribute vec3 facing;
  uniform float radius;
  uniform float lines;
  uniform float pitch;
  uniform float leastPx;
  uniform vec2 screen;
  varying float vAcross;
  varying float vCover;
  varying vec3 vSide;
  varying vec3 vEye;

  void main() {
    vec3 a = (modelViewMatrix * vec4(start, 1.0)).xyz;
    vec3 b = (modelViewMatrix * vec4(end, 1.0)).xyz;
    vec3 axis = normalize(b - a);
    // A little past each end, so that bars which meet at an angle leave no notch.
    vec3 p = mix(a, b, position.y) + axis * radius * (2.0 * position.y - 1.0);
    vec3 eye = isOrthographic ? vec3(0.0, 0.0, 1.0) : normalize(-p);
    float depth = isOrthographic ? 1.0 : max(1e-4, -p.z);
    float pixel = 2.0 * depth / (projectionMatrix[1][1] * screen.y);
    vec3 side = cross(axis, eye);
    float across = length(side);
    side = across < 1e-3 ? vec3(1.0, 0.0, 0.0) : side / across;
    float width = radius;
    if (lines > 1.0) {
      // A bundle lies flat in its panel and carries its lines as a pattern across.
      side = normalize(cross(axis, normalMatrix * facing));
      width = 0.5 * lines * pitch;
      vCover = 1.0;
    } else {
      float drawn = max(width, 0.5 * leastPx * pixel);
      vCover = width / drawn;
      width = drawn;
    }
    p += side * position.x * width;
    vAcross = position.x;
    vSide = side;
    vEye = eye;
    gl_Position = projectionMatrix * vec4(p, 1.0);
  }
`

const fragmentShader = /* glsl */ `
  uniform vec3 colour;
  uniform vec3 glow;
  uniform float shine;
  uniform float lightShare;
  uniform float radius;
  uniform float lines;
  uniform float pitch;
  uniform float leastCover;
  uniform vec3 keyDirection;
  varying float vAcross;
  varying float vCover;
  varying vec3 vSide;
  varying vec3 vEye;

  void main() {
    float across = clamp(vAcross, -1.0, 1.0);
    float cover = vCover;
    if (lines > 1.0) {
      float along = vAcross * 0.5 * lines;
      float blur = max(fwidth(along), 1e-5);
      float half_ = radius / pitch;
      float away = abs(fract(along) - 0.5);
      float crisp = 1.0 - smoothstep(half_ - 0.5 * blur, half_ + 0.5 * blur, away);
      // Finer than a pixel, the pattern becomes its own average.
      cover = mix(crisp, 2.0 * half_, smoothstep(0.35, 0.9, blur));
      across = 0.0;
    }
    vec3 normal = normalize(vSide * across + vEye * sqrt(1.0 - across * across));
    vec3 key = normalize((viewMatrix * vec4(keyDirection, 0.0)).xyz);
    vec3 up = normalize((viewMatrix * vec4(0.0, 1.0, 0.0, 0.0)).xyz);
    float sky = 0.5 + 0.5 * dot(normal, up);
    float lit = max(0.0, dot(normal, key));
    float gleam = pow(max(0.0, dot(normal, normalize(key + vEye))), 24.0);
    vec3 light = colour * lightShare * (0.35 + 0.5 * sky + 0.9 * lit) + shine * (gleam + 0.12 * sky) + glow;
    float edge = fwidth(vAcross);
    float round = lines > 1.0 ? 1.0 : 1.0 - smoothstep(1.0 - min(0.5, edge), 1.0 + edge, abs(vAcross));
    gl_FragColor = vec4(light, max(cover, leastCover) * max(round, 0.6));
    if (lines > 1.0 && gl_FragColor.a < 0.04) discard;
    #include <tonemapping_fragment>
    #include <colorspace_fragment>
  }
`

/** A material for twine; `screen` is shared so that a resize reaches every one of them. */
export function createTwineMaterial(look: TwineLook, screen: Vector2, key: Vector3): ShaderMaterial {
  const material = new ShaderMaterial({
    vertexShader,
    fragmentShader,
    side: DoubleSide,
    uniforms: { ...uniformsOf(look), keyDirection: { value: key }, screen: { value: screen } },
  })
  // Coverage by sample needs no sorting, which tens of thousands of crossing strips could not have.
  material.alphaToCoverage = true
  return material
}

/** Brings a material of other twine to this look, without any glow. */
export function dressTwine(material: ShaderMaterial, look: TwineLook): void {
  for (const [name, { value }] of Object.entries(uniformsOf(look))) {
    const uniform = material.uniforms[name]
    if (uniform) uniform.value = value
  }
}

const uniformsOf = (look: TwineLook) => ({
  colour: { value: new Color(look.colour) },
  glow: { value: new Color(0, 0, 0) },
  radius: { value: look.radiusM },
  shine: { value: look.shine },
  lightShare: { value: look.lightShare },
  lines: { value: look.lines },
  pitch: { value: look.pitchM },
  leastPx: { value: look.leastPx },
  leastCover: { value: look.leastPx > 1.5 ? 1 : 0.3 },
})
