import { expect, test } from 'vitest';
import { LANE_LENGTH } from '../../src/base/constants.js';
import { smeared } from '../../src/motion/lane/film-grid.js';
import { oiledLane } from '../../src/motion/lane/oil.js';
import { surfaceOf } from '../../src/motion/lane/surface.js';
import { reactionNumbers } from '../../src/motion/reaction/reaction.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import { drilledBall, last, usualRelease } from '../support/bodies.js';
import { uniformLane } from '../support/dry-lanes.js';
import { demoPattern } from '../support/patterns.js';

const launch = { x: 0, angle: 0 };
const settings = { step: 0.002, freshSurface: { bandWidth: 0.006, carriedShare: 0.15, wornPerPass: 0.3 } };
const lane = uniformLane(0.1);
const LAW = { oiled: 0.1, dry: 0.1, filmScale: 1 };
const noFilmBeyond = (end: number): Float64Array => smeared((_, y) => (y > end ? Number.NaN : 0.1), 0, 0);
const NaN_ = Number.NaN;
const SPHERE_OF_NOTHING = [
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0],
] as const;

test.each([
  ['NaN speed', drilledBall, { ...usualRelease, speed: NaN_ }, launch, lane, settings],
  ['infinite spin', drilledBall, { ...usualRelease, spin: Number.POSITIVE_INFINITY }, launch, lane, settings],
  ['NaN tilt', drilledBall, { ...usualRelease, axisTilt: NaN_ }, launch, lane, settings],
  ['no PAP', drilledBall, { ...usualRelease, pap_B: [0, 0, 0] as const }, launch, lane, settings],
  ['NaN spin phase', drilledBall, { ...usualRelease, spinPhase: NaN_ }, launch, lane, settings],
  ['NaN laydown', drilledBall, usualRelease, { x: NaN_, angle: 0 }, lane, settings],
  ['NaN angle', drilledBall, usualRelease, { x: 0, angle: NaN_ }, lane, settings],
  ['no mass', { ...drilledBall, mass: 0 }, usualRelease, launch, lane, settings],
  ['negative mass', { ...drilledBall, mass: -7 }, usualRelease, launch, lane, settings],
  ['no radius', { ...drilledBall, radius: 0 }, usualRelease, launch, lane, settings],
  ['no inertia', { ...drilledBall, I_Bcm_B: SPHERE_OF_NOTHING }, usualRelease, launch, lane, settings],
  [
    'NaN centre of mass',
    { ...drilledBall, p_BoBcm_B: [NaN_, 0, 0] as const },
    usualRelease,
    launch,
    lane,
    settings,
  ],
  [
    'centre of mass outside',
    { ...drilledBall, p_BoBcm_B: [0.2, 0, 0] as const },
    usualRelease,
    launch,
    lane,
    settings,
  ],
  ['negative friction', drilledBall, usualRelease, launch, uniformLane(-0.1), settings],
  [
    'a film below nothing',
    drilledBall,
    usualRelease,
    launch,
    surfaceOf(
      smeared(() => -1, 0, 0),
      LAW,
    ),
    settings,
  ],
  ['NaN friction', drilledBall, usualRelease, launch, uniformLane(NaN_), settings],
  ['no step', drilledBall, usualRelease, launch, lane, { ...settings, step: 0 }],
  ['negative step', drilledBall, usualRelease, launch, lane, { ...settings, step: -0.002 }],
  ['absurdly fine step', drilledBall, usualRelease, launch, lane, { ...settings, step: 1e-9 }],
  ['NaN step', drilledBall, usualRelease, launch, lane, { ...settings, step: NaN_ }],
  [
    'no band width',
    drilledBall,
    usualRelease,
    launch,
    lane,
    { step: 0.002, freshSurface: { bandWidth: 0, carriedShare: 0.1, wornPerPass: 0 } },
  ],
] as const)(
  '%s gives outcome invalid and no samples, and reaction numbers that say so',
  (_, body, release, at, on, how) => {
    const shot = rollShot(body, release, at, on, how);
    expect(shot.outcome).toBe('invalid');
    expect(shot.time.length).toBe(0);
    expect(shot.rollStart).toBe(-1);
    const { rollsBeforePins, ...numbers } = reactionNumbers(shot, 0.1085);
    expect(rollsBeforePins).toBe(false);
    for (const value of Object.values(numbers)) expect(value).toBeNaN();
  },
);

test('a ball that would leave the lane at every turn (d ω² = 20 g) gives outcome hops and no samples', () => {
  const body = { ...drilledBall, p_BoBcm_B: [0, 0.05, 0] as const };
  const shot = rollShot(body, { ...usualRelease, spin: 63 }, launch, lane, settings);
  expect(shot.outcome).toBe('hops');
  expect(shot.time.length).toBe(0);
});

test.each([
  ['absurd friction', uniformLane(1e6)],
  ['friction that turns to no number halfway', surfaceOf(noFilmBeyond(9), LAW)],
  [
    'a film that is no number while the ball rolls',
    surfaceOf(noFilmBeyond(17), { oiled: 0.3, dry: 0.3, filmScale: 1 }),
  ],
] as const)('%s: an outcome, in bounded time', (_, on) => {
  const shot = rollShot(drilledBall, usualRelease, launch, on, settings);
  expect(['pins', 'gutter', 'stopped', 'hops', 'invalid']).toContain(shot.outcome);
  if (shot.time.length > 0)
    for (const column of [shot.x, shot.y, shot.vx]) expect(column.every(Number.isFinite)).toBe(true);
  expect(shot.steps).toBeLessThan(200_000);
});

test('a pattern longer than the lane is one that ends at the pins', () => {
  const [first, second] = demoPattern.zones;
  const at = (toY: number) => ({ ...demoPattern, zones: [{ ...first, toY, filmEnd: first.film }, second] });
  const roll = (toY: number) =>
    rollShot(drilledBall, usualRelease, { x: -0.1, angle: 0.03 }, oiledLane(at(toY)), settings);
  expect(roll(40).outcome).toBe(roll(LANE_LENGTH).outcome);
  expect(last(roll(40).x)).toBe(last(roll(LANE_LENGTH).x));
});

test('a ball rolled backward never arrives, and says so in bounded time', () => {
  const shot = rollShot(drilledBall, { ...usualRelease, speed: -3 }, launch, uniformLane(0.001), settings);
  expect(shot.outcome).not.toBe('pins');
  expect(shot.steps).toBeLessThanOrEqual(13000);
});

test('a ball that stands still is stopped, not endless', () => {
  const shot = rollShot(drilledBall, { ...usualRelease, speed: 0, spin: 0 }, launch, lane, settings);
  expect(['stopped', 'gutter']).toContain(shot.outcome);
});

test('a ball sent off the lane ends in the gutter, its path kept so far', () => {
  const shot = rollShot(drilledBall, usualRelease, { x: 0.4, angle: 0.2 }, lane, settings);
  expect(shot.outcome).toBe('gutter');
  expect(shot.y[shot.y.length - 1]).toBeLessThan(2);
  expect(shot.time.length).toBeGreaterThan(10);
});
