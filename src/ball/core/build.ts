import { cube } from '../../math/power.js';
import type { Cover } from './wanted-core.js';

/** What a core is put into: a cover, and filler no lighter than a bound. SI. */
export interface Build extends Cover {
  readonly lightestFiller: number;
}

/** Places of a build's three traits in what is built of its kind: 0 the least of each, 1 the greatest. */
export interface BuildPlaces {
  readonly thickness: number;
  readonly density: number;
  readonly filler: number;
}

/** Builds of one kind. */
export interface BuildKind {
  /** How many of all builds are of this kind. */
  readonly share: number;
  /** The build at some places, for a ball of a mass (kg). */
  readonly at: (places: BuildPlaces, mass: number) => Build;
}

/** Share of builds that are unusual: our own choice, few enough to leave the bands of ordinary balls as they are. */
const UNUSUAL_SHARE = 0.1;

/**
 * Nearly all builds: covers 3/4 in thick or a little more, of 1.15 to 1.23 g/cc, and filler of 0.6 g/cc or more, in
 * light balls less (common practice, no source). Squared: most covers are thin and light.
 */
export const USUAL_BUILDS: BuildKind = {
  share: 1 - UNUSUAL_SHARE,
  at: ({ thickness, density }, mass) => ({
    coverThickness: THIN + 0.0045 * thickness ** 2,
    coverDensity: LIGHT + (HEAVY - LIGHT) * density ** 2,
    lightestFiller: usualFiller(mass),
  }),
};

/** The few others: no rule forbids them, and some balls cannot be built otherwise. Ends and shares: our own choice. */
export const UNUSUAL_BUILDS: BuildKind = {
  share: UNUSUAL_SHARE,
  at: ({ thickness, density, filler }, mass) => ({
    coverThickness: 0.0155 + 0.0095 * thickness,
    coverDensity: 1100 + 300 * density,
    lightestFiller: usualFiller(mass) * (1 - 0.25 * cube(1 - filler)),
  }),
};

/** Whether a ball has a cover or a filler that is seldom built, the ball's mass in kg. */
export const isUnusual = (
  { coverThickness, coverDensity, fillerDensity }: Cover & { readonly fillerDensity: number },
  mass: number,
): boolean =>
  coverThickness < THIN || coverDensity < LIGHT || coverDensity > HEAVY || fillerDensity < usualFiller(mass);

/** Thinnest usual cover, m. */
export const THIN = 0.019;

/** Densities of usual covers, kg/m³. */
export const LIGHT = 1150;
export const HEAVY = 1230;

/**
 * Least density of usual filler, kg/m³. A light ball is made light by its filler, since cover and core are not:
 * 14 lb and up use 0.6 g/cc, each kilogram less lowers it by as much as the inside then lacks.
 */
const usualFiller = (mass: number): number => Math.max(350, 600 - 170 * Math.max(0, 6.35 - mass));
