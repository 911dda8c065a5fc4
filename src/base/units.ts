/**
 * The only place where units are converted. Inside flarewise everything is SI and radians; a name that
 * carries a unit suffix (`speedMph`, `pinToPapIn`) holds a value as a person typed it or will read it.
 * Exact factors: international inch, avoirdupois pound and ounce, statute mile (1959 agreement).
 */
export const INCH = 0.0254; // m
export const MM = 1e-3; // m
export const CM = 1e-2; // m
export const FOOT = 12 * INCH; // m
export const POUND = 0.45359237; // kg
export const OUNCE = POUND / 16; // kg
export const GRAM = 1e-3; // kg
export const MPH = (5280 * FOOT) / 3600; // m/s
export const KMH = 1000 / 3600; // m/s
export const RPM = (2 * Math.PI) / 60; // rad/s
export const DEGREE = Math.PI / 180; // rad
export const GRAM_PER_CC = 1000; // kg/m³

/** A typed value times its unit: `from(15, POUND)` is in kg. */
export const from = (value: number, unit: number): number => value * unit;

/** An SI value in a unit: `to(mass, POUND)` is in pounds. */
export const to = (value: number, unit: number): number => value / unit;
