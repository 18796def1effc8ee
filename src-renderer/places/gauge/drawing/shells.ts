import type { MeasureMethod } from '@shared/schema/rule-species'

/*
 * Line drawings of the sorts of animal that are measured, our own, seen from above. Only the right half is kept, from
 * the middle of the front to the middle of the rear; the left is its mirror image. Units are the drawing's own.
 */

export type ShellKind =
  'swimmer' | 'mud-crab' | 'oval' | 'spider' | 'frog' | 'lobster' | 'rock-lobster' | 'claw'

/** Where the jaws touch: across at ±x, or along between two heights beside or on the mid-line. */
export type Contact =
  | { readonly axis: 'width'; readonly x: number; readonly y: number }
  | { readonly axis: 'length'; readonly from: number; readonly to: number; readonly x: number }

export interface Shell {
  /** Right half of the edge, open at both ends on the mid-line. */
  readonly edge: string
  /** Right half of what is drawn on the shell. */
  readonly marks: string
  /** Right half of legs, claws and feelers, behind the shell. */
  readonly limbs: string
  readonly halfWidth: number
  readonly top: number
  readonly bottom: number
  readonly contacts: Partial<Record<MeasureMethod, Contact>>
  /** Drawn as it stands, with no mirror image. */
  readonly whole?: true
}

const crabLimbs =
  'M70 128C100 140 124 158 132 184M88 120C122 126 148 142 158 166M100 108C138 106 166 116 178 138' +
  'M66 52C78 34 96 22 118 16C112 4 104 -8 92 -20C84 -34 66 -42 54 -40C66 -34 70 -26 66 -20C58 -28 46 -28 40 -24C50 -16 66 -6 84 -4'

const lobster: Shell = {
  edge:
    'M0 14L4 34L9 44C10 52 16 54 20 48L28 58C38 78 42 104 38 128L34 136L0 139' +
    'M0 139L36 142L42 152L36 158L38 166L43 176L36 180L36 188L40 198L34 202L33 210L37 220L30 224L29 232L32 240L24 244L0 244' +
    'M24 244L34 252C42 262 44 276 36 286L22 284L20 250M0 288C10 288 16 284 18 276L18 248L0 246',
  marks: 'M0 96C14 96 26 88 34 76M0 158L36 158M0 180L36 180M0 202L34 202M0 224L30 224M0 244L24 244',
  limbs:
    'M34 78C52 80 68 88 78 102M38 94C56 98 70 108 78 124M38 110C54 116 66 128 72 144' +
    'M26 60C44 44 56 26 60 4C74 -2 86 -20 86 -44C84 -56 76 -64 68 -66C72 -56 70 -44 64 -38C58 -46 52 -48 46 -46C46 -28 50 -10 60 4' +
    'M12 34C20 10 26 -20 24 -52',
  halfWidth: 43,
  top: 14,
  bottom: 288,
  contacts: {
    'length-eye-to-rear': { axis: 'length', from: 51, to: 139, x: 15 },
    'length-front-to-rear': { axis: 'length', from: 14, to: 139, x: 0 },
    'tail-length': { axis: 'length', from: 139, to: 288, x: 0 },
    'tail-width': { axis: 'width', x: 43, y: 176 },
  },
}

// No claws: long thick feelers and plain legs.
const rockLobsterLimbs =
  'M34 70C56 66 74 70 86 82M38 88C60 88 76 96 86 110M38 106C58 108 74 118 82 134M36 122C52 128 64 138 70 152' +
  'M12 38C26 20 44 -10 52 -60M16 40C32 24 50 -4 60 -56M6 32C8 18 12 4 20 -8'

export const shells: Record<ShellKind, Shell> = {
  swimmer: {
    edge:
      'M0 50L6 46L12 51L20 45C23 53 32 53 36 46L42 48L48 54L55 52L60 58L67 57L72 63L79 62L84 68L90 67L95 73L102 72L104 79' +
      'L132 84L105 91C96 112 76 130 50 138L44 144L0 145',
    marks: 'M0 92C22 90 44 92 66 86M18 110C22 122 22 130 16 138M0 66C10 70 22 70 30 64',
    limbs:
      'M88 118C120 122 146 134 158 156M98 106C132 104 160 112 174 130' +
      'M58 138C84 150 106 156 122 152C132 148 142 154 140 164C134 172 122 168 118 160' +
      'M62 56C76 36 98 28 124 28C122 12 112 -10 96 -30C88 -38 76 -40 70 -36C80 -28 82 -18 78 -10C70 -18 60 -20 52 -18C64 -6 80 2 98 4',
    halfWidth: 132,
    top: 45,
    bottom: 145,
    contacts: {
      'width-tip-to-tip': { axis: 'width', x: 132, y: 84 },
      'width-notch-to-notch': { axis: 'width', x: 102, y: 75.5 },
      'width-base-of-spines': { axis: 'width', x: 105, y: 91 },
      'width-widest': { axis: 'width', x: 103, y: 76 },
      'length-notch-to-rear': { axis: 'length', from: 50, to: 145, x: 0 },
      'length-front-to-rear': { axis: 'length', from: 50, to: 145, x: 0 },
    },
  },
  'mud-crab': {
    edge:
      'M0 47L5 42L10 48L16 42L22 48C25 55 36 55 40 46L46 43L52 49L59 46L64 53L71 50L76 57L83 55L87 62L94 60L98 67L105 66' +
      'L108 73L115 73L115 80L123 83L114 92C106 112 84 132 54 144L48 150L0 152',
    marks: 'M0 104C28 102 52 98 70 90M22 118C26 130 26 138 20 146M0 72C12 76 26 76 36 70',
    limbs:
      'M90 122C122 128 146 142 156 164M102 108C138 106 164 116 178 136' +
      'M60 146C84 158 104 164 120 160C130 156 140 162 138 172C132 180 120 176 116 168' +
      'M66 52C82 28 108 20 134 22C136 2 126 -22 104 -42C94 -50 78 -50 70 -44C84 -36 88 -26 84 -16C74 -26 60 -28 50 -24C62 -8 82 6 104 8',
    halfWidth: 123,
    top: 42,
    bottom: 152,
    contacts: {
      'width-widest': { axis: 'width', x: 123, y: 83 },
      'width-tip-to-tip': { axis: 'width', x: 123, y: 83 },
      'width-notch-to-notch': { axis: 'width', x: 115, y: 78 },
      'width-base-of-spines': { axis: 'width', x: 114, y: 92 },
      'length-notch-to-rear': { axis: 'length', from: 47, to: 152, x: 0 },
      'length-front-to-rear': { axis: 'length', from: 47, to: 152, x: 0 },
    },
  },
  oval: {
    edge:
      'M0 44L5 41L9 45L15 41L20 45C24 51 33 50 36 43L43 42L47 46L54 44L58 49L65 47L69 53L76 51L80 57L87 56L91 62L98 61' +
      'L101 68L108 68L110 75L117 76L117 83L127 87L117 95C112 116 88 134 52 142L40 148L0 150',
    marks: 'M0 100C20 104 40 100 52 90M30 66C40 76 54 78 66 74M20 120C24 130 24 138 18 146',
    limbs: crabLimbs + 'M58 140C76 152 92 170 96 190',
    halfWidth: 127,
    top: 41,
    bottom: 150,
    contacts: {
      'width-points-in': { axis: 'width', x: 127, y: 87 },
      'width-tip-to-tip': { axis: 'width', x: 127, y: 87 },
      'width-points-out': { axis: 'width', x: 117, y: 82 },
      'width-notch-to-notch': { axis: 'width', x: 117, y: 82 },
      'width-base-of-spines': { axis: 'width', x: 117, y: 95 },
      'width-widest': { axis: 'width', x: 127, y: 87 },
      'length-notch-to-rear': { axis: 'length', from: 44, to: 150, x: 0 },
      'length-front-to-rear': { axis: 'length', from: 44, to: 150, x: 0 },
    },
  },
  spider: {
    edge: 'M0 36L12 8L15 36C20 44 26 42 30 36L34 48L50 50L46 60L64 66L58 76L78 84L70 94L86 104L76 112C80 128 70 144 54 152L44 166L34 160L0 164',
    marks:
      'M0 70L5 62L10 70M0 100L6 90L12 100M0 130L6 120L12 130M34 78L38 70L44 78M40 108L46 100L52 108M30 140L36 132L42 140',
    limbs:
      'M60 80C96 66 128 66 156 82M76 104C112 100 148 110 172 134M72 124C106 130 140 148 158 176M56 148C84 162 110 186 118 208' +
      'M46 58C66 34 82 12 84 -14C82 -28 74 -38 66 -44M84 -14C90 -26 90 -38 86 -46',
    halfWidth: 86,
    top: 8,
    bottom: 164,
    contacts: {
      'length-without-spines': { axis: 'length', from: 36, to: 164, x: 0 },
      'width-widest': { axis: 'width', x: 80, y: 118 },
    },
  },
  frog: {
    edge: 'M0 10L5 28L14 24L18 34C20 40 26 40 28 34L34 28L44 34L58 26L64 40L82 34L82 52C88 66 88 80 84 98C78 128 62 154 40 170L0 176',
    marks: 'M14 70L20 66M34 64L40 68M52 78L58 74M18 96L24 100M40 104L46 100M16 128L22 124M34 134L40 138',
    limbs:
      'M78 108C104 112 122 124 130 140C136 150 130 160 120 158M66 136C88 146 104 162 108 178C110 188 102 194 94 190' +
      'M76 50C96 40 114 22 118 0C116 -14 106 -24 94 -28M118 0C112 -8 104 -10 96 -8',
    halfWidth: 86,
    top: 10,
    bottom: 176,
    contacts: {
      'length-front-to-rear': { axis: 'length', from: 10, to: 176, x: 0 },
      'length-eye-to-rear': { axis: 'length', from: 38, to: 176, x: 23 },
      'width-widest': { axis: 'width', x: 86, y: 74 },
    },
  },
  lobster,
  'rock-lobster': { ...lobster, limbs: rockLobsterLimbs },
  claw: {
    whole: true,
    edge:
      'M-112 96C-124 84 -124 66 -110 58C-92 44 -58 34 -20 34C12 34 40 40 62 54C84 66 102 78 112 92L96 90C76 84 54 84 34 90' +
      'L40 96C66 100 94 104 116 100C100 122 66 134 30 132C-20 132 -76 122 -112 96Z',
    marks:
      'M-112 58C-104 70 -104 84 -110 96M34 90L28 84M48 86L46 92M64 85L62 92M80 87L78 94M52 98L54 92M70 101L72 95M88 103L90 97',
    limbs: 'M-112 62C-132 58 -148 64 -156 78M-110 96C-130 104 -144 102 -154 94',
    halfWidth: 116,
    top: 34,
    bottom: 132,
    contacts: { 'claw-length': { axis: 'width', x: 116, y: 100 } },
  },
}
