/** A float as the water meets it. */
export type FloatBody =
  | {
      readonly shape: 'sphere'
      readonly diameterM: number
      readonly massKg: number
      /** Drag coefficient when under, on the frontal area. */
      readonly cd: number
      /** Added to `cd` for the waves made when awash, largest at half draft. */
      readonly cdAwash: number
    }
  | {
      /** Stands upright on its rope and meets the current side-on. */
      readonly shape: 'cylinder' | 'bullet'
      readonly diameterM: number
      readonly lengthM: number
      readonly massKg: number
      readonly cd: number
      readonly cdAwash: number
    }
  | {
      /** Known only by its net buoyancy and drag area, whatever its draft. */
      readonly shape: 'lumped'
      readonly netBuoyancyN: number
      readonly dragAreaM2: number
    }
