/* Constants of nature and of the sea that no user changes; everything adjustable is in `coefficients.ts`. */

/** Acceleration of gravity used throughout [m/s²]; the standard value is 9.80665. */
export const gravity = 9.81

/** Sea water where temperature and salinity are not known [kg/m³]; coastal water is 1022 to 1028. */
export const seaWaterDensity = 1025

/** Von Kármán's constant of the logarithmic current profile, as Soulsby 1997 uses it. */
export const vonKarman = 0.4

/** Exponent of the current profile by default, u ~ z^(1/7). */
export const powerLawExponent = 1 / 7

/** Period of the principal lunar tide M2 [h]. */
export const lunarTidePeriodH = 12.4206
