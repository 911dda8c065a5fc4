import { DEGREE, FOOT, from, MPH, RPM } from '../../src/base/units.js';
import { unit } from '../../src/math/vec3.js';
import type { RollingBody } from '../../src/motion/shot/body.js';
import type { Launch, Release } from '../../src/motion/shot/release.js';
import { drilledBall, isotropicBall, SKEW, unevenBall, uniformGyration, usualRelease } from './bodies.js';

/** A stretch of lane of one friction, from a distance (m) on; the first starts at 0. */
interface Zone {
  readonly fromY: number;
  readonly friction: number;
}

/** A shot that two engines roll. */
export interface Scene {
  readonly name: string;
  readonly body: RollingBody;
  readonly release: Release;
  readonly launch: Launch;
  readonly zones: readonly Zone[];
  /** The second engine rolls it in the mirror, as a left-hander's. */
  readonly isMirrored?: boolean;
}

const lane = (friction: number): readonly Zone[] => [{ fromY: 0, friction }];

/** Oil, then dry boards. */
const OIL_THEN_DRY: readonly Zone[] = [
  { fromY: 0, friction: 0.04 },
  { fromY: from(40, FOOT), friction: 0.2 },
];

const uniform = isotropicBall(uniformGyration(0.1085));
const axisymmetric = unevenBall([2.55, 2.55, 2.5], [0, 0, 0], SKEW);
const triaxial = unevenBall([2.5, 2.535, 2.55], [0, 0, 0], SKEW);
const offCentre = unevenBall([2.5, 2.535, 2.55], [0.0006, -0.0004, 0.0007], SKEW);

const usual: Omit<Scene, 'name'> = {
  body: drilledBall,
  release: usualRelease,
  launch: { x: -0.1, angle: 0.04 },
  zones: lane(0.1),
};

const released = (change: Partial<Release>): Release => ({ ...usualRelease, ...change });

/** Shots that differ in one thing each, and some in all. */
export const SCENES: readonly Scene[] = [
  { ...usual, name: 'uniform ball', body: uniform },
  { ...usual, name: 'axisymmetric core', body: axisymmetric },
  { ...usual, name: 'triaxial core', body: triaxial },
  { ...usual, name: 'triaxial, centre of mass 1 mm off', body: offCentre },
  { ...usual, name: 'two zones, oil then dry', zones: OIL_THEN_DRY },
  { ...usual, name: 'two zones, 1 mm off', zones: OIL_THEN_DRY, body: offCentre },
  { ...usual, name: 'left-hander, two zones, mirrored', zones: OIL_THEN_DRY, isMirrored: true },
  {
    ...usual,
    name: 'left-hander, 1 mm off, mirrored',
    body: offCentre,
    isMirrored: true,
  },
  { ...usual, name: 'spinner, 60° tilt', release: released({ axisTilt: 60 * DEGREE }) },
  {
    ...usual,
    name: 'full roller: no tilt, track over the middle',
    release: released({ axisTilt: 0, axisRotation: 25 * DEGREE, pap_B: unit([1, 0, 1]) }),
  },
  {
    ...usual,
    name: 'very slow: 10 mph, 120 rpm',
    release: released({ speed: from(10, MPH), spin: from(120, RPM) }),
  },
  {
    ...usual,
    name: 'very fast: 25 mph, 600 rpm',
    release: released({ speed: from(25, MPH), spin: from(600, RPM) }),
  },
  { ...usual, name: 'high friction 0.30', zones: lane(0.3) },
  { ...usual, name: 'low friction 0.02', zones: lane(0.02) },
  {
    ...usual,
    name: 'three zones, spin phase 2 rad, 1 mm off',
    body: offCentre,
    release: released({ spinPhase: 2, axisRotation: 75 * DEGREE }),
    zones: [
      { fromY: 0, friction: 0.03 },
      { fromY: from(25, FOOT), friction: 0.08 },
      { fromY: from(42, FOOT), friction: 0.24 },
    ],
  },
];
