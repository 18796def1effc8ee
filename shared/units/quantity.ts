declare const unit: unique symbol

/** A number known to be in SI unit `U`. The brand exists only for the type checker. */
export type Quantity<U extends string> = number & { readonly [unit]: U }

export type Metres = Quantity<'m'>
export type SquareMetres = Quantity<'m2'>
export type CubicMetres = Quantity<'m3'>
export type Kilograms = Quantity<'kg'>
export type KilogramsPerCubicMetre = Quantity<'kg/m3'>
export type KilogramsPerMetre = Quantity<'kg/m'>
export type KilogramsPerSquareMetre = Quantity<'kg/m2'>
export type Newtons = Quantity<'N'>
export type NewtonsPerMetre = Quantity<'N/m'>
export type NewtonMetres = Quantity<'N·m'>
export type MetresPerSecond = Quantity<'m/s'>
export type MetresPerSecondSquared = Quantity<'m/s2'>
export type SquareMetresPerSecond = Quantity<'m2/s'>
export type Seconds = Quantity<'s'>
export type Radians = Quantity<'rad'>
export type Ratio = Quantity<'1'>

/** Marks a plain number as a quantity of the unit in the name; it converts nothing. */
export const metres = (x: number) => x as Metres
export const squareMetres = (x: number) => x as SquareMetres
export const cubicMetres = (x: number) => x as CubicMetres
export const kilograms = (x: number) => x as Kilograms
export const kilogramsPerCubicMetre = (x: number) => x as KilogramsPerCubicMetre
export const kilogramsPerMetre = (x: number) => x as KilogramsPerMetre
export const kilogramsPerSquareMetre = (x: number) => x as KilogramsPerSquareMetre
export const newtons = (x: number) => x as Newtons
export const newtonsPerMetre = (x: number) => x as NewtonsPerMetre
export const newtonMetres = (x: number) => x as NewtonMetres
export const metresPerSecond = (x: number) => x as MetresPerSecond
export const metresPerSecondSquared = (x: number) => x as MetresPerSecondSquared
export const squareMetresPerSecond = (x: number) => x as SquareMetresPerSecond
export const seconds = (x: number) => x as Seconds
export const radians = (x: number) => x as Radians
export const ratio = (x: number) => x as Ratio
