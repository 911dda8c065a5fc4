import { describe, expect, test } from 'vitest';
import type { RollingBody } from '../../../src/motion/shot/body.js';
import { isPlausible } from '../../../src/motion/shot/plausible.js';
import type { Launch, Release } from '../../../src/motion/shot/release.js';
import type { ShotSettings } from '../../../src/motion/shot/shot-settings.js';
import { bodyOfMoments, drilledBall, usualRelease } from '../../support/bodies.js';

interface Changes {
  readonly body?: Partial<RollingBody>;
  readonly release?: Partial<Release>;
  readonly launch?: Partial<Launch>;
  readonly settings?: Partial<ShotSettings>;
}

const freshSurface = { bandWidth: 0.006, carriedShare: 0.15, wornPerPass: 0.3 };
const claim = ({ body, release, launch, settings }: Changes): boolean =>
  isPlausible(
    { ...drilledBall, ...body },
    { ...usualRelease, ...release },
    { x: 0, angle: 0, ...launch },
    { step: 0.008, freshSurface, ...settings },
  );

const fresh = (change: Partial<typeof freshSurface>): Changes => ({
  settings: { freshSurface: { ...freshSurface, ...change } },
});

describe('a shot can be computed', () => {
  test.each<[string, Changes]>([
    ['as it usually is', {}],
    ['without oil on the ball', { settings: { freshSurface: null } }],
    ['with oil that never leaves the ball, or leaves it at once', fresh({ wornPerPass: 0 })],
    ['with oil that leaves the ball at once', fresh({ wornPerPass: 1 })],
    ['with none carried back', fresh({ carriedShare: 0 })],
    ['with more carried back than there was', fresh({ carriedShare: 1.5 })],
    ['with eight places a turn', { settings: { ringPlaces: 8 } }],
    ['without weight', { settings: { gravity: 0 } }],
    ['without end', { settings: { length: Number.POSITIVE_INFINITY, halfWidth: Number.POSITIVE_INFINITY } }],
    ['in a million steps', { settings: { step: 12e-6 } }],
    [
      'thrown backward, not spinning, with a negative tilt',
      { release: { speed: -1, spin: 0, axisTilt: -1 } },
    ],
    ['with a PAP of any length', { release: { pap_B: [1e-3, 0, 0] } }],
  ])('%s', (_, changes) => {
    expect(claim(changes)).toBe(true);
  });
});

describe('a shot cannot be computed', () => {
  const noNumbers: [string, Changes][] = [Number.NaN, Number.POSITIVE_INFINITY].flatMap((wrong) => [
    [`a mass of ${wrong}`, { body: { mass: wrong } }],
    [`a radius of ${wrong}`, { body: { radius: wrong } }],
    [`a centre of mass at ${wrong}`, { body: { p_BoBcm_B: [0, wrong, 0] } }],
    [
      `an inertia of ${wrong}`,
      {
        body: {
          I_Bcm_B: [
            [0.03, wrong, 0],
            [wrong, 0.03, 0],
            [0, 0, 0.03],
          ],
        },
      },
    ],
    ...(['speed', 'spin', 'axisTilt', 'axisRotation', 'spinPhase'] as const).map(
      (name): [string, Changes] => [`a ${name} of ${wrong}`, { release: { [name]: wrong } }],
    ),
    [`a PAP at ${wrong}`, { release: { pap_B: [1, wrong, 0] } }],
    [`a laydown at ${wrong}`, { launch: { x: wrong } }],
    [`an angle of ${wrong}`, { launch: { angle: wrong } }],
    [`steps of ${wrong}`, { settings: { step: wrong } }],
    [`gravity of ${wrong}`, { settings: { gravity: wrong } }],
    [`${wrong} places of rings`, { settings: { ringPlaces: wrong } }],
    [`bands ${wrong} wide`, fresh({ bandWidth: wrong })],
    [`a share of ${wrong} carried`, fresh({ carriedShare: wrong })],
    [`a share of ${wrong} worn`, fresh({ wornPerPass: wrong })],
  ]);
  test.each<[string, Changes]>([
    ...noNumbers,
    ['no mass', { body: { mass: 0 } }],
    ['less than no mass', { body: { mass: -1 } }],
    ['no radius', { body: { radius: 0, p_BoBcm_B: [0, 0, 0] } }],
    ['less than no radius', { body: { radius: -0.1 } }],
    ['a centre of mass on the cover', { body: { p_BoBcm_B: [0, 0, drilledBall.radius] } }],
    ['no inertia about one axis', { body: bodyOfMoments([0, 0.03, 0.03]) }],
    ['less than no inertia about one axis', { body: bodyOfMoments([0.03, 0.03, -0.03]) }],
    ['no PAP', { release: { pap_B: [0, 0, 0] } }],
    ['weight that pulls up', { settings: { gravity: -9.8 } }],
    ['no step', { settings: { step: 0 } }],
    ['steps back in time', { settings: { step: -0.008 } }],
    ['no time', { settings: { longest: 0 } }],
    ['less than no time', { settings: { longest: -1 } }],
    ['more than a million steps', { settings: { step: 11.9e-6 } }],
    ['an endless shot', { settings: { longest: Number.POSITIVE_INFINITY } }],
    ['a lane of no length', { settings: { length: 0 } }],
    ['a lane that is no number long', { settings: { length: Number.NaN } }],
    ['a lane of no width', { settings: { halfWidth: 0 } }],
    ['a lane that is no number wide', { settings: { halfWidth: Number.NaN } }],
    ['seven places of rings a turn', { settings: { ringPlaces: 7 } }],
    ['half a place', { settings: { ringPlaces: 96.5 } }],
    ['bands of no width', fresh({ bandWidth: 0 })],
    ['less than nothing carried', fresh({ carriedShare: -0.1 })],
    ['less than nothing worn', fresh({ wornPerPass: -0.01 })],
    ['more than everything worn', fresh({ wornPerPass: 1.01 })],
  ])('%s', (_, changes) => {
    expect(claim(changes)).toBe(false);
  });
});
