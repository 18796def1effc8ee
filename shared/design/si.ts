/*
 * The design is written in the trade's units (mm, degrees of bearing); everything computed from it is SI. The
 * change is made here and nowhere else.
 */

/** Millimetres to metres. */
export const mm = (millimetres: number): number => millimetres / 1000

/** Degrees to radians. */
export const degrees = (deg: number): number => (deg * Math.PI) / 180

/**
 * Angle about the pot's axis of a bearing: bearings run clockwise seen from above, angles anticlockwise.
 *
 * @param bearingDeg bearing from the pot's front [deg]
 * @returns angle from +x towards +y [rad]
 */
export const angleOfBearing = (bearingDeg: number): number => degrees(-bearingDeg)
