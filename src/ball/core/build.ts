import { cube } from '../../math/power.js';
import type { Cover } from './wanted-core.js';

/** What surrounds a core: a cover, and the lightest filler allowed (kg/m³). SI. */
export interface Build extends Cover {
  readonly lightestFiller: number;
}

/** Where a build lies in the range of its kind, in each of three traits: 0 the least, 1 the greatest. */
export interface BuildPlaces {
  readonly thickness: number;
  readonly density: number;
  readonly filler: number;
}

/** Builds of one kind. */
export interface BuildKind {
  /** Share of all builds that are of this kind. */
  readonly share: number;
  /** The build at some places, for a ball of a mass (kg). */
  readonly at: (places: BuildPlaces, mass: number) => Build;
}

/** Share of builds that are unusual. Our own choice: too few to change the bands of ordinary balls. */
const UNUSUAL_SHARE = 0.1;

/**
 * Nearly all builds: covers 3/4 in thick or up to 0.18 in more, of 1.15 to 1.23 g/cc, and filler of 0.6 g/cc or more, less in
 * light balls (common practice, no source). Places are squared, since most covers are thin and light.
 */
export const USUAL_BUILDS: BuildKind = {
  share: 1 - UNUSUAL_SHARE,
  at: ({ thickness, density }, mass) => ({
    coverThickness: THIN + 0.0045 * thickness ** 2,
    coverDensity: LIGHT + (HEAVY - LIGHT) * density ** 2,
    lightestFiller: usualFiller(mass),
  }),
};

/** The few others: no rule forbids them, and some balls cannot be built in any other way. Ranges: our own choice. */
export const UNUSUAL_BUILDS: BuildKind = {
  share: UNUSUAL_SHARE,
  at: ({ thickness, density, filler }, mass) => ({
    coverThickness: 0.0155 + 0.0095 * thickness,
    coverDensity: LIGHTEST_COVER + (HEAVIEST_COVER - LIGHTEST_COVER) * density,
    lightestFiller: usualFiller(mass) * (1 - 0.25 * cube(1 - filler)),
  }),
};

/** Whether a ball has an unusual cover or filler. @param mass  the ball's, kg */
export const isUnusual = (
  { coverThickness, coverDensity, fillerDensity }: Cover & { readonly fillerDensity: number },
  mass: number,
): boolean =>
  coverThickness < THIN || coverDensity < LIGHT || coverDensity > HEAVY || fillerDensity < usualFiller(mass);

/** Bounds of usual filler, kg/m³: up to 1.4 g/cc (common practice, no source), and in light balls down to 0.35 g/cc (assumed, no source). */
export const LIGHTEST_FILLER = 350;
export const HEAVIEST_FILLER = 1400;

/** Bounds of all covers that are tried, kg/m³ (our own choice). */
export const LIGHTEST_COVER = 1100;
export const HEAVIEST_COVER = 1400;

/** Greatest density of a part of a core, kg/m³ (component rule, from memory). */
export const GREATEST_DENSITY = 3800;

/** Thinnest usual cover, m. */
export const THIN = 0.019;

/** Densities of usual covers, kg/m³. */
export const LIGHT = 1150;
export const HEAVY = 1230;

/**
 * Least density of usual filler, kg/m³, for a ball's mass in kg: 0.6 g/cc from 14 lb up. Lighter balls are made with lighter filler;
 * each kilogram less lowers it by 170 kg/m³, about half of what the inside lacks if the core stays the same. Assumed, no source.
 */
const usualFiller = (mass: number): number => Math.max(LIGHTEST_FILLER, 600 - 170 * Math.max(0, 6.35 - mass));
