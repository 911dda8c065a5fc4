import type { Vec3 } from '../math/vec3.js';

/** How a hole ends below its straight wall. */
export type HoleTip = 'flat' | 'cone' | 'round';

/** A straight bore, m: depth is that of the straight wall, along its axis. */
export interface Bore {
  readonly radius: number;
  readonly depth: number;
}

/** A slug or insert: the wider bore it sits in, how deep it fills that bore (m), its density (kg/m³). */
export interface Sleeve {
  readonly bore: Bore;
  readonly height: number;
  readonly density: number;
}

/** The bores of a hole and how it ends, wherever it lies. */
export interface HoleShape {
  /** What the finger meets; through the sleeve where there is one. */
  readonly open: Bore;
  readonly sleeve: Sleeve | null;
  readonly tip: HoleTip;
}

/** Offsets of the hole's axis from the ball's centre, m. */
export interface Pitches {
  /** Positive: the hole leans under the palm (forward); negative: reverse. */
  readonly forwardPitch: number;
  /** Positive: the axis passes on the PAP's side of the centre. */
  readonly lateralPitch: number;
}

/** The holes a hand goes into. */
export type GrippingHoleName = 'thumb' | 'middle' | 'ring';

/** A hole on the ball: unit vector of its mouth's centre and unit vector inward along its axis, in B. */
export interface Hole extends HoleShape {
  readonly name: GrippingHoleName | 'vent';
  /** The hole that a vent lets air into. */
  readonly into?: GrippingHoleName;
  readonly mouth_B: Vec3;
  readonly axis_B: Vec3;
}

/** Radius of the widest bore of a hole at the surface, m. */
export const mouthRadius = ({ open, sleeve }: HoleShape): number =>
  Math.max(open.radius, sleeve?.bore.radius ?? 0);

/** Name of a hole that tells several vents apart. */
export const holeName = ({ name, into }: Pick<Hole, 'name' | 'into'>): string =>
  into ? `vent into ${into}` : name;
