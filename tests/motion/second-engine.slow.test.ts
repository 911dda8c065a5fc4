import { beforeAll, expect, test } from 'vitest';
import { BOARD } from '../../src/base/constants.js';
import { DEGREE } from '../../src/base/units.js';
import { difference, rollOurs } from '../oracles/compare-engines.js';
import { type Arrival, secondEngine } from '../oracles/second-engine.js';
import { expectWithin } from '../support/bodies.js';
import { SCENES, type Scene } from '../support/scenes.js';

const SOURCE = 'mujoco-js, a general rigid-body engine';

/** Step of the second engine, s. */
const STEP = 5e-5;

/*
 * What the engine's softness leaves at that step: friction takes 2 ms to turn with the slip, the ball hops by
 * some 0.05 mm and creeps while it rolls. Far inside what a bowler could see: 1/4 board, 0.1°, 1 %.
 */
const TOLERANCE = { x: 0.05 * BOARD, heading: 0.02 * DEGREE, speed: 2e-4, spin: 1e-3, axis: 1.5 * DEGREE };

let roll: (scene: Scene, step: number) => Arrival;
beforeAll(async () => {
  roll = await secondEngine();
});

test.each(SCENES)(`$name: the ball gets to the pins as it does in another engine (${SOURCE})`, (scene) => {
  const ours = rollOurs(scene);
  const off = difference(roll(scene, STEP), ours);
  expectWithin(off.x, 0, TOLERANCE.x);
  expectWithin(off.x, 0, 0.01 * Math.abs(ours.hook));
  expectWithin(off.heading, 0, TOLERANCE.heading);
  expectWithin(off.speed, 0, TOLERANCE.speed);
  expectWithin(off.spin, 0, TOLERANCE.spin);
  expectWithin(off.axis, 0, TOLERANCE.axis);
});

test('the greatest difference of the axis comes from the other engine’s softness: it halves with its step', () => {
  const spinner = SCENES.find(({ name }) => name.startsWith('spinner'))!;
  const ours = rollOurs(spinner);
  const [coarse, middle, fine] = [2e-4, 1e-4, 5e-5].map((step) => difference(roll(spinner, step), ours).axis);
  for (const ratio of [middle / coarse, fine / middle]) {
    expect(ratio).toBeGreaterThan(0.4);
    expect(ratio).toBeLessThan(0.6);
  }
});

test('a wrong sign in the offset of the centre of mass would be seen', () => {
  const scene = SCENES.find(({ name }) => name === 'triaxial, centre of mass 1 mm off')!;
  const [x, y, z] = scene.body.p_BoBcm_B;
  const wrong = { ...scene, body: { ...scene.body, p_BoBcm_B: [-x, -y, -z] as const } };
  const off = difference(roll(scene, STEP), rollOurs(wrong));
  expect(Math.abs(off.x)).toBeGreaterThan(10 * TOLERANCE.x);
});
