/** Degrees to radians, for inputs given in degrees. */
export const radians = (degrees: number) => (degrees * Math.PI) / 180
